package storyrod.drawing;

import static storyrod.geometry.Face.BACK;
import static storyrod.geometry.Face.BOTTOM;
import static storyrod.geometry.Face.FRONT;
import static storyrod.geometry.Face.LEFT;
import static storyrod.geometry.Face.RIGHT;
import static storyrod.geometry.Face.TOP;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.About;
import storyrod.description.Description;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.description.ShopEntry;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;

/** Hand-made parts of an invented bench that cover each kind of cut; sizes in 1/64 in. */
final class BenchParts {
  static final Span NOWHERE = new Span(new SourceText("bench.yaml", ""), 0, 0);
  private static final int PLY = 46;

  private final LengthFormat format;
  private final List<Part> parts = new ArrayList<>();

  private BenchParts(LengthFormat format) {
    this.format = format;
  }

  static Piece inInches() {
    return new BenchParts(new LengthFormat(Unit.INCH, 64)).piece();
  }

  static Piece inMillimetres() {
    return new BenchParts(new LengthFormat(Unit.MM, 1)).piece();
  }

  static Length at(int sixtyFourths) {
    return Length.inch(sixtyFourths, 64);
  }

  static int in(double inches) {
    return (int) Math.round(inches * 64);
  }

  static Range range(int from, int to) {
    return new Range(at(from), at(to));
  }

  static Box box(int x0, int x1, int y0, int y1, int z0, int z1) {
    return new Box(range(x0, x1), range(y0, y1), range(z0, z1));
  }

  static Point point(int x, int y, int z) {
    return new Point(at(x), at(y), at(z));
  }

  static Cut trench(String term, Face from, Box removed, String forWhat) {
    Length depth = removed.size(from.axis());
    return new Cut.Trench(term, from, removed, depth, Optional.of(forWhat), NOWHERE);
  }

  static Cut holes(Face from, Point first, Axis along, int step, int count) {
    return new Cut.Holes(
        "hole",
        from,
        first,
        along,
        at(step),
        count,
        at(16),
        at(24),
        false,
        Optional.of("shelf-pin"),
        NOWHERE);
  }

  static Cut screws(Face from, Point first, Axis along, int step, int count) {
    return new Cut.Holes(
        "screw hole",
        from,
        first,
        along,
        at(step),
        count,
        at(11),
        at(48),
        true,
        Optional.of("long-screw"),
        NOWHERE);
  }

  static Cut pockets(Face from, Face end, Point... centres) {
    return new PocketHoles(
        "pocket hole",
        from,
        end,
        List.of(centres),
        at(24),
        at(9),
        15,
        Optional.of("pocket-screw"),
        NOWHERE);
  }

  private void part(
      String name, StockKind kind, Axis length, Axis thickness, Box box, Cut... cuts) {
    String mark = "" + (char) ('A' + parts.size());
    parts.add(
        new Part(
            name,
            name,
            mark,
            false,
            Optional.empty(),
            stock(kind),
            box,
            box,
            length,
            thickness,
            List.of(cuts),
            storyrod.geometry.Solid.of(box),
            Optional.empty(),
            NOWHERE));
  }

  private static StockEntry stock(StockKind kind) {
    return new StockEntry(
        kind == StockKind.SOLID ? "ash" : "ply",
        NOWHERE,
        kind,
        "ash, white",
        new Located<>(at(48), NOWHERE),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        true);
  }

  private Piece piece() {
    side();
    bottom();
    part(
        "rail",
        StockKind.SOLID,
        Axis.X,
        Axis.Y,
        box(0, in(48.5), 0, 48, 0, in(2)),
        pockets(BACK, LEFT, point(0, 24, 32), point(0, 24, 96)),
        pockets(BACK, RIGHT, point(in(48.5), 24, 32), point(in(48.5), 24, 96)));
    drawerSide();
    part("foot", StockKind.SOLID, Axis.X, Axis.Y, box(0, in(4), 0, in(1.75), 0, in(3.25)));
    part("top", StockKind.SOLID, Axis.X, Axis.Z, box(0, in(54), 0, in(17.5), 0, 48));
    stretcher();
    panel();
    dowelled();
    part(
        "drawer-face",
        StockKind.SOLID,
        Axis.X,
        Axis.Y,
        box(0, in(12.375), 0, 48, 0, in(10.5)),
        screws(FRONT, point(in(3.6875), 0, in(5.25)), Axis.X, in(5), 2));
    stoppedRail();
    return new Piece(description(), parts, marks(), List.of());
  }

  private void side() {
    Box box = box(0, PLY, 48, in(16.5), in(2.25), in(17.75));
    part(
        "left-side",
        StockKind.SHEET,
        Axis.Z,
        Axis.X,
        box,
        trench("dado", RIGHT, box(22, PLY, 48, in(16.5), in(3.25), in(3.25) + PLY), "bottom"),
        trench(
            "groove", RIGHT, box(30, PLY, in(15.75), in(16), in(3.25) + PLY, in(17.75)), "panel"),
        holes(RIGHT, point(PLY, in(2.75), in(7)), Axis.Z, in(1.25), 5),
        holes(RIGHT, point(PLY, in(13.75), in(7)), Axis.Z, in(1.25), 5));
  }

  private void bottom() {
    Box box = box(0, in(51.75), 48, in(16.5), 0, PLY);
    part(
        "bottom",
        StockKind.SHEET,
        Axis.X,
        Axis.Z,
        box,
        trench("dado", TOP, box(in(17), in(17) + PLY, 48, in(15.75), 30, PLY), "left-side"),
        trench("dado", TOP, box(in(34.75) - PLY, in(34.75), 48, in(15.75), 30, PLY), "left-side"),
        trench("groove", TOP, box(24, in(51.375), in(15.75), in(16), 30, PLY), "panel"),
        screws(TOP, point(in(1.5), in(1.625), PLY), Axis.X, in(2), 2),
        screws(TOP, point(in(48.25), in(1.625), PLY), Axis.X, in(2), 2),
        screws(TOP, point(in(1.5), in(14.5), PLY), Axis.X, in(2), 2),
        screws(TOP, point(in(48.25), in(14.5), PLY), Axis.X, in(2), 2));
  }

  private void drawerSide() {
    part(
        "drawer.left-side",
        StockKind.SHEET,
        Axis.Y,
        Axis.X,
        box(0, 30, 0, in(14), 0, in(9)),
        trench("rabbet", RIGHT, box(15, 30, 0, 30, 0, in(9)), "rail"),
        trench("rabbet", RIGHT, box(15, 30, in(14) - 30, in(14), 0, in(9)), "rail"),
        trench("groove", RIGHT, box(15, 30, 0, in(14), 25, 42), "panel"));
  }

  private void stretcher() {
    part(
        "stretcher",
        StockKind.SOLID,
        Axis.X,
        Axis.Z,
        box(0, in(51), 0, in(3), 0, 48),
        pockets(BOTTOM, LEFT, point(0, 48, 24), point(0, 144, 24)),
        pockets(BOTTOM, RIGHT, point(in(51), 48, 24), point(in(51), 144, 24)),
        screws(TOP, point(in(17), 64, 48), Axis.Y, in(1), 2),
        screws(TOP, point(in(34), 64, 48), Axis.Y, in(1), 2),
        trench("slot", BACK, box(0, in(51), in(2.5), in(3), 20, 28), "top-fastener"));
  }

  private void panel() {
    part(
        "panel",
        StockKind.SHEET,
        Axis.X,
        Axis.Z,
        box(0, in(30), 0, in(20), 0, 48),
        trench("cutout", TOP, box(in(10), in(18), in(6), in(11), 0, 48), "top"),
        trench("notch", FRONT, box(0, in(3), 0, in(2), 0, 48), "foot"),
        trench("notch", FRONT, box(in(22), in(25), 0, in(1.5), 0, 48), "foot"),
        trench("rabbet", BOTTOM, box(0, in(30), in(19.5), in(20), 0, 24), "rail"));
  }

  private void dowelled() {
    part(
        "apron",
        StockKind.SOLID,
        Axis.X,
        Axis.Y,
        box(0, in(16), 0, in(1), 0, in(4)),
        holes(LEFT, point(0, 32, in(1)), Axis.Z, in(2), 2),
        holes(RIGHT, point(in(16), 32, in(1)), Axis.Z, in(2), 2),
        holes(TOP, point(in(3), 32, in(4)), Axis.X, in(5), 3));
  }

  private void stoppedRail() {
    part(
        "post",
        StockKind.SOLID,
        Axis.Z,
        Axis.Y,
        box(0, in(2), 0, in(1.5), 0, in(40)),
        trench("slot", FRONT, box(in(0.75), in(1.25), 0, in(1), in(4), in(6)), "rail"),
        trench("slot", FRONT, box(in(0.75), in(1.25), 0, in(1), in(30), in(32)), "rail"),
        trench("rabbet", BACK, box(in(1.5), in(2), in(1), in(1.5), 0, in(40)), "panel"));
  }

  private List<Mark> marks() {
    return parts.stream()
        .map(part -> new Mark(part.mark(), part.title(), part, 1, 0, List.of(part.name())))
        .toList();
  }

  private Description description() {
    Map<String, ItemEntry> items = new LinkedHashMap<>();
    item(items, "shelf-pin", "Shelf pin 1/4 in", ItemKind.SHELF_PIN);
    item(items, "long-screw", "Wood screw #8 x 1 3/4 in", ItemKind.WOOD_SCREW);
    item(items, "pocket-screw", "Pocket screw 1 1/4 in fine thread", ItemKind.POCKET_SCREW);
    item(items, "top-fastener", "Slotted top fastener", ItemKind.TOP_FASTENER);
    About about =
        new About(
            new Located<>("Bench", NOWHERE),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    ShopEntry shop = new ShopEntry(at(8), at(16), at(64), at(16), at(13 * 64), 20, 6);
    return new Description(
        NOWHERE.source(),
        about,
        format,
        Map.of(),
        Map.of(),
        List.of(),
        List.of(),
        List.of(),
        Map.of(),
        items,
        List.of(),
        Optional.empty(),
        shop,
        List.of());
  }

  private static void item(Map<String, ItemEntry> items, String name, String title, ItemKind kind) {
    items.put(
        name,
        new ItemEntry(
            name,
            NOWHERE,
            title,
            kind,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            1,
            Optional.empty()));
  }
}
