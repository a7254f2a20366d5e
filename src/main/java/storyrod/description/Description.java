package storyrod.description;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Units;
import storyrod.words.Words;

/**
 * A project description, read and worked out. Lists keep the order of the text.
 *
 * @param options the other versions of the piece, with what is said about each
 * @param record what was really done
 * @param format how its own lengths are written, in the unit that also decides usual sizes
 * @param words those in which its plan set is told, to which the format's decimal mark belongs
 * @param units those in which its plan set prints lengths
 * @param parts all parts, those of sub-assemblies under their full name ({@code drawer.front})
 */
public record Description(
    SourceText source,
    About about,
    LengthFormat format,
    Map<String, Length> sizes,
    Map<String, StockEntry> stock,
    List<PartEntry> parts,
    List<Entry> joints,
    List<Entry> cuts,
    Map<String, AssemblyEntry> assemblies,
    Map<String, ItemEntry> items,
    List<HardwareEntry> hardware,
    Optional<FinishEntry> finish,
    Optional<GlueEntry> glue,
    ShopEntry shop,
    ClimateEntry climate,
    List<OnHandEntry> onHand,
    List<StageEntry> build,
    Map<String, String> options,
    Words words,
    Units units,
    RecordEntry record) {
  public Description {
    options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
    sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
    stock = Collections.unmodifiableMap(new LinkedHashMap<>(stock));
    assemblies = Collections.unmodifiableMap(new LinkedHashMap<>(assemblies));
    items = Collections.unmodifiableMap(new LinkedHashMap<>(items));
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
    cuts = List.copyOf(cuts);
    hardware = List.copyOf(hardware);
    onHand = List.copyOf(onHand);
    build = List.copyOf(build);
  }

  /**
   * A description without options, of a piece for the usual room, with nothing on hand or recorded.
   */
  public Description(
      SourceText source,
      About about,
      LengthFormat format,
      Map<String, Length> sizes,
      Map<String, StockEntry> stock,
      List<PartEntry> parts,
      List<Entry> joints,
      List<Entry> cuts,
      Map<String, AssemblyEntry> assemblies,
      Map<String, ItemEntry> items,
      List<HardwareEntry> hardware,
      Optional<FinishEntry> finish,
      ShopEntry shop,
      List<StageEntry> build) {
    this(
        source,
        about,
        format,
        sizes,
        stock,
        parts,
        joints,
        cuts,
        assemblies,
        items,
        hardware,
        finish,
        Optional.empty(),
        shop,
        ClimateEntry.USUAL,
        List.of(),
        build,
        Map.of(),
        Words.ENGLISH,
        Units.OWN,
        RecordEntry.NONE);
  }

  /** How the plan set prints lengths. */
  public LengthFormat printed() {
    return format.shownIn(units);
  }

  /**
   * The same piece, told in other words, with its lengths in other units; titles in these words
   * too, where they have names for them.
   */
  public Description in(Words others, Units inOthers) {
    Translation to = new Translation(others);
    return new Description(
        source,
        to.about(about),
        format.withMark(others.decimalMark()),
        sizes,
        stock,
        Translation.each(parts, to::part),
        joints,
        cuts,
        Translation.each(assemblies, to::assembly),
        Translation.each(items, to::item),
        Translation.each(hardware, to::hardware),
        finish,
        glue,
        shop,
        climate,
        onHand,
        Translation.each(build, to::stage),
        options,
        others,
        inOthers,
        to.record(record));
  }

  /** Where a stock comes from. */
  public enum StockKind {
    SOLID,
    SHEET
  }

  /** By what a price counts. */
  public enum PriceUnit {
    BOARD_FOOT,
    SHEET
  }

  /** A price, in the maker's own currency, for one unit of stock. */
  public record Price(Rational amount, PriceUnit per) {}

  /** A sheet's size: along its face grain, then across. */
  public record SheetSize(Length length, Length width) {}

  /**
   * A stock.
   *
   * @param species the wood's name, as in the species table, or the sheet's material in words
   * @param boughtAs the rough thickness class of boards, such as 4/4, as a length
   * @param density in kg/m³, where given
   * @param grained whether the face of a sheet has a grain direction that parts must follow
   * @param figures what else the project knows of it
   */
  public record StockEntry(
      String name,
      Span at,
      StockKind kind,
      String species,
      Located<Length> thickness,
      Optional<Length> boughtAs,
      Optional<SheetSize> sheet,
      Optional<Price> price,
      Optional<Located<Rational>> density,
      boolean grained,
      StockFigures figures) {
    /** A stock of which the tables know the rest. */
    public StockEntry(
        String name,
        Span at,
        StockKind kind,
        String species,
        Located<Length> thickness,
        Optional<Length> boughtAs,
        Optional<SheetSize> sheet,
        Optional<Price> price,
        Optional<Located<Rational>> density,
        boolean grained) {
      this(
          name,
          at,
          kind,
          species,
          thickness,
          boughtAs,
          sheet,
          price,
          density,
          grained,
          StockFigures.NONE);
    }
  }

  /**
   * Parts that are built as a unit before they are fitted.
   *
   * @param name the full name; the name up to its last dot is that of the sub-assembly it is built
   *     into, if there is one
   * @param parts the full names of its own parts, without those of sub-assemblies built into it
   */
  public record AssemblyEntry(String name, String title, Span at, List<String> parts) {
    public AssemblyEntry {
      parts = List.copyOf(parts);
    }
  }

  /** What an item of hardware is, which decides the rules that hold for it. */
  public enum ItemKind {
    WOOD_SCREW,
    POCKET_SCREW,
    BRAD,
    /** Runners beside the drawer. */
    SLIDE,
    /** Runners under the drawer, out of sight. */
    UNDER_SLIDE,
    /** One whose tongue slides in a slot of the rail. */
    TOP_FASTENER,
    /** Two discs in one, let into the rail's upper edge, that turn as the top moves. */
    ROTATING_FASTENER,
    PULL,
    KNOB,
    CATCH,
    /** A hinge with a cup that is let into the door's inside. */
    CONCEALED_HINGE,
    /** A hinge with two leaves that are let into the edges of door and case. */
    BUTT_HINGE,
    SHELF_PIN,
    /** A round peg, glued into both parts of a joint. */
    DOWEL,
    /** A flat oval of pressed beech, glued into a slot of both parts. */
    BISCUIT,
    /** A tenon of its own, glued into a mortise of both parts. */
    LOOSE_TENON,
    /** A plug of wood over a sunk screw. */
    PLUG,
    /** A ring under a screw's head, broader than the slot that the screw goes through. */
    WASHER,
    /** A wooden block whose tongue slides in a slot of the rail. */
    BUTTON,
    FOOT,
    LEVELLING_FOOT,
    /** What ties a piece to the wall. */
    ANTI_TIP_STRAP,
    OTHER;

    public boolean isSlide() {
      return this == SLIDE || this == UNDER_SLIDE;
    }

    public boolean isHinge() {
      return this == CONCEALED_HINGE || this == BUTT_HINGE;
    }

    public boolean isTopFastener() {
      return this == TOP_FASTENER || this == ROTATING_FASTENER || this == BUTTON;
    }
  }

  /**
   * An item of hardware with the sizes that matter.
   *
   * @param diameter a screw's shank, a pin's body
   * @param sideClearance what a slide needs beside the drawer, each side
   * @param pack how many come in a pack, 1 if not said
   * @param price for one pack
   * @param sizes what only its kind has
   */
  public record ItemEntry(
      String name,
      Span at,
      String title,
      ItemKind kind,
      Optional<Length> length,
      Optional<Length> diameter,
      Optional<Length> sideClearance,
      int pack,
      Optional<Rational> price,
      ItemSizes sizes,
      Optional<Located<String>> from) {
    /** An item that is bought. */
    public ItemEntry(
        String name,
        Span at,
        String title,
        ItemKind kind,
        Optional<Length> length,
        Optional<Length> diameter,
        Optional<Length> sideClearance,
        int pack,
        Optional<Rational> price,
        ItemSizes sizes) {
      this(
          name,
          at,
          title,
          kind,
          length,
          diameter,
          sideClearance,
          pack,
          price,
          sizes,
          Optional.empty());
    }

    /** An item with no sizes of a special kind. */
    public ItemEntry(
        String name,
        Span at,
        String title,
        ItemKind kind,
        Optional<Length> length,
        Optional<Length> diameter,
        Optional<Length> sideClearance,
        int pack,
        Optional<Rational> price) {
      this(name, at, title, kind, length, diameter, sideClearance, pack, price, ItemSizes.NONE);
    }
  }

  /**
   * Hardware that no joint brings: slides, pulls, pins, feet.
   *
   * @param parts the full names of the parts it is fastened to or serves
   * @param screw the item that holds it, with how many for each
   */
  public record HardwareEntry(
      Span at,
      Located<String> item,
      int count,
      List<Located<String>> parts,
      Optional<String> screw,
      int screwsEach,
      Optional<String> say) {
    public HardwareEntry {
      parts = List.copyOf(parts);
    }

    /** The same entry with another number of screws for each. */
    public HardwareEntry withScrewsEach(int other) {
      return new HardwareEntry(at, item, count, parts, screw, other, say);
    }
  }

  public Optional<PartEntry> part(String name) {
    return parts.stream().filter(part -> part.name().equals(name)).findFirst();
  }
}
