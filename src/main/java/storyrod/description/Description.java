package storyrod.description;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
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
        Translation.each(onHand, to::onHand),
        Translation.each(build, to::stage),
        options,
        others,
        inOthers,
        to.record(record));
  }

  /** The same for who has nothing on hand yet and buys all of its stock. */
  public Description asBought() {
    return new Description(
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
        glue,
        shop,
        climate,
        List.of(),
        build,
        options,
        words,
        units,
        record);
  }

  public Optional<PartEntry> part(String name) {
    return parts.stream().filter(part -> part.name().equals(name)).findFirst();
  }
}
