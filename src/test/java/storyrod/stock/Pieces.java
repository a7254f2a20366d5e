package storyrod.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.About;
import storyrod.description.Description;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.description.Price;
import storyrod.description.PriceUnit;
import storyrod.description.SheetSize;
import storyrod.description.ShopEntry;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Unit;
import storyrod.piece.Joint;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Builds small pieces for tests: flat parts of 3/4 in stock, sizes in inches as text. */
final class Pieces {
  private static final Span AT = Span.startOf(new SourceText("project.yaml", ""));
  private static final Length THICKNESS = Length.inch(3, 4);

  private final Map<String, StockEntry> stock = new LinkedHashMap<>();
  private final Map<String, ItemEntry> items = new LinkedHashMap<>();
  private final List<Part> parts = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<HardwareEntry> hardware = new ArrayList<>();

  Pieces boards(String name, Optional<Length> boughtAs, Rational price) {
    Price perFoot = new Price(price, PriceUnit.BOARD_FOOT);
    stock.put(name, entry(name, StockKind.SOLID, boughtAs, Optional.empty(), perFoot, false));
    return this;
  }

  Pieces sheets(String name, boolean grained, long price) {
    SheetSize size = new SheetSize(Length.inches(96), Length.inches(48));
    Price perSheet = new Price(Rational.of(price, 1), PriceUnit.SHEET);
    stock.put(
        name, entry(name, StockKind.SHEET, Optional.empty(), Optional.of(size), perSheet, grained));
    return this;
  }

  private static StockEntry entry(
      String name,
      StockKind kind,
      Optional<Length> boughtAs,
      Optional<SheetSize> sheet,
      Price price,
      boolean grained) {
    return new StockEntry(
        name,
        AT,
        kind,
        name,
        new Located<>(THICKNESS, AT),
        boughtAs,
        sheet,
        Optional.of(price),
        Optional.empty(),
        grained);
  }

  Pieces item(String name, int pack, Optional<Rational> price) {
    items.put(
        name,
        new ItemEntry(
            name,
            AT,
            "Title of " + name,
            ItemKind.OTHER,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            pack,
            price));
    return this;
  }

  /** Adds some equal parts of one mark. */
  Pieces parts(String mark, int count, String ofStock, String length, String width) {
    List<Part> equal = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      equal.add(part(mark, "part-" + mark + i, ofStock, box(length, width)));
    }
    parts.addAll(equal);
    List<String> names = equal.stream().map(Part::name).toList();
    marks.add(new Mark(mark, "Part " + mark, equal.getFirst(), count, 0, names));
    return this;
  }

  private static Box box(String length, String width) {
    return new Box(upTo(Length.parse(length)), upTo(Length.parse(width)), upTo(THICKNESS));
  }

  private static Range upTo(Length end) {
    return new Range(Length.ZERO, end);
  }

  private Part part(String mark, String name, String ofStock, Box box) {
    return new Part(
        name,
        name,
        mark,
        false,
        Optional.empty(),
        stock.get(ofStock),
        box,
        box,
        Axis.X,
        Axis.Z,
        List.of(),
        Solid.of(box),
        Optional.empty(),
        AT);
  }

  Pieces joint(String item, int count) {
    Box contact = new Box(upTo(THICKNESS), upTo(THICKNESS), upTo(Length.ZERO));
    joints.add(
        new Joint(
            "screws",
            parts.getFirst().name(),
            Face.BOTTOM,
            parts.getLast().name(),
            Face.BOTTOM,
            contact,
            false,
            true,
            List.of(new Joint.ItemCount(item, count)),
            Optional.empty(),
            AT));
    return this;
  }

  Pieces hardware(String item, int count, Optional<String> screw, int screwsEach) {
    hardware.add(
        new HardwareEntry(
            AT, new Located<>(item, AT), count, List.of(), screw, screwsEach, Optional.empty()));
    return this;
  }

  Piece piece() {
    return new Piece(description(), parts, marks, joints);
  }

  private Description description() {
    return new Description(
        AT.source(),
        new About(
            new Located<>("Test", AT),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        new LengthFormat(Unit.INCH, 32),
        Map.of(),
        stock,
        List.of(),
        List.of(),
        List.of(),
        Map.of(),
        items,
        hardware,
        Optional.empty(),
        shop(),
        List.of());
  }

  private static ShopEntry shop() {
    return new ShopEntry(
        Length.inch(1, 8),
        Length.inch(1, 4),
        Length.inches(1),
        Length.inch(1, 4),
        Length.inches(13),
        20,
        6);
  }
}
