package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.About;
import storyrod.description.AssemblyEntry;
import storyrod.description.Description;
import storyrod.description.FinishEntry;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.description.OrderEntry;
import storyrod.description.ShopEntry;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.description.StageEntry;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.TrenchRole;

/** Builds small pieces for tests, with joints worked out by hand-sized rules; measures in mm. */
final class TestPiece {
  private final SourceText source;
  private final Map<String, Draft> drafts = new LinkedHashMap<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Runnable> lettings = new ArrayList<>();
  private final Map<String, StockEntry> stock = new LinkedHashMap<>();
  private final Map<String, ItemEntry> items = new LinkedHashMap<>();
  private final List<HardwareEntry> hardware = new ArrayList<>();
  private final List<StageEntry> build = new ArrayList<>();
  private Optional<FinishEntry> finish = Optional.empty();
  private LengthFormat format = new LengthFormat(Unit.MM, 32);

  private static final class Draft {
    final String title;
    final String mark;
    final StockEntry stock;
    final Box shoulder;
    final Axis length;
    final Axis thickness;
    final List<Cut> cuts = new ArrayList<>();
    Box box;

    Draft(String title, String mark, StockEntry stock, Box box, Axis length, Axis thickness) {
      this.title = title;
      this.mark = mark;
      this.stock = stock;
      this.shoulder = box;
      this.box = box;
      this.length = length;
      this.thickness = thickness;
    }
  }

  TestPiece() {
    this("test.yaml", "");
  }

  private TestPiece(String file, String text) {
    source = new SourceText(file, text);
    stock("ash", StockKind.SOLID);
    stock("ply", StockKind.SHEET);
  }

  /** A piece whose maker's order stands in a text, one {@code VERB TARGET} a line. */
  static TestPiece withOrder(String stage, String order) {
    TestPiece piece = new TestPiece("order.yaml", order);
    List<OrderEntry> entries = new ArrayList<>();
    int at = 0;
    for (String line : order.split("\n")) {
      String[] words = line.split(" ");
      Span span = new Span(piece.source, at, at + line.length());
      entries.add(new OrderEntry(span, words[0], words[1]));
      at += line.length() + 1;
    }
    piece.build.add(
        new StageEntry(new Located<>(stage, Span.startOf(piece.source)), entries, Map.of()));
    return piece;
  }

  private void stock(String name, StockKind kind) {
    stock.put(
        name,
        new StockEntry(
            name,
            at(),
            kind,
            kind == StockKind.SOLID ? "ash, white" : "birch plywood",
            new Located<>(Length.mm(18), at()),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false));
  }

  TestPiece inches() {
    format = new LengthFormat(Unit.INCH, 32);
    return this;
  }

  TestPiece finish(String product) {
    finish = Optional.of(new FinishEntry(at(), product, 3, 24, 220, Optional.empty()));
    return this;
  }

  TestPiece item(String name, String title, ItemKind kind) {
    items.put(
        name,
        new ItemEntry(
            name,
            at(),
            title,
            kind,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            1,
            Optional.empty()));
    return this;
  }

  /** A wood screw of which length and shank are known, in mm. */
  TestPiece screw(String name, double length, double shank) {
    items.put(
        name,
        new ItemEntry(
            name,
            at(),
            name,
            ItemKind.WOOD_SCREW,
            Optional.of(Length.nearest(length)),
            Optional.of(Length.nearest(shank)),
            Optional.empty(),
            1,
            Optional.empty()));
    return this;
  }

  TestPiece mount(String item, int count, Optional<String> screw, int each, String... parts) {
    List<Located<String>> on = List.of(parts).stream().map(p -> new Located<>(p, at())).toList();
    hardware.add(
        new HardwareEntry(
            at(), new Located<>(item, at()), count, on, screw, each, Optional.empty()));
    return this;
  }

  TestPiece part(String name, String title, String mark, String stockName, double... fromTo) {
    Box box = box(fromTo);
    List<Axis> bySize =
        List.of(Axis.values()).stream().sorted(java.util.Comparator.comparing(box::size)).toList();
    drafts.put(
        name, new Draft(title, mark, stock.get(stockName), box, bySize.get(2), bySize.get(0)));
    return this;
  }

  static Box box(double... fromTo) {
    return new Box(
        range(fromTo[0], fromTo[1]), range(fromTo[2], fromTo[3]), range(fromTo[4], fromTo[5]));
  }

  private static Range range(double from, double to) {
    return new Range(Length.nearest(from), Length.nearest(to));
  }

  /** Lets an end of one part into another by a depth, as dados, grooves and rabbets do. */
  TestPiece letIn(String type, String first, Face face, String second, double depth, boolean glue) {
    Draft in = drafts.get(first);
    Draft into = drafts.get(second);
    Length deep = Length.nearest(depth);
    lettings.add(
        () ->
            into.cuts.add(
                role(type)
                    .given(
                        new Cut.Trench(
                            type,
                            face.opposite(),
                            inside(
                                in.box.with(face.axis(), tip(in.shoulder, face, deep)), into.box),
                            deep,
                            Optional.of(first),
                            at()))));
    in.box = in.box.extended(face, deep);
    joints.add(
        new Joint(
            type,
            first,
            face,
            second,
            face,
            contact(in.shoulder, face, deep),
            glue,
            glue,
            List.of(),
            Optional.empty(),
            at()));
    return this;
  }

  private static Range tip(Box box, Face face, Length deep) {
    Length end = box.at(face);
    return new Range(end, end).extended(face.sign(), deep);
  }

  private static Box inside(Box box, Box outer) {
    return new Box(box.x().shared(outer.x()), box.y().shared(outer.y()), box.z().shared(outer.z()));
  }

  private static Box contact(Box box, Face face, Length deep) {
    Length end = tip(box, face, deep).end(face.sign());
    return box.with(face.axis(), new Range(end, end));
  }

  /** Sets one part against another and fastens it. */
  TestPiece fasten(
      String type, String first, Face face, String second, boolean glue, String item, int count) {
    Box contact = contact(drafts.get(first).shoulder, face, Length.ZERO);
    joints.add(
        new Joint(
            type,
            first,
            face,
            second,
            face,
            contact,
            glue,
            true,
            item.isEmpty() ? List.of() : List.of(new ItemCount(item, count)),
            Optional.empty(),
            at()));
    return this;
  }

  private static TrenchRole role(String type) {
    return switch (type) {
      case "dado" -> TrenchRole.HOUSING;
      case "groove" -> TrenchRole.GROOVE;
      default -> TrenchRole.OTHER;
    };
  }

  /** Cuts a box away from a part, wherever it lies. */
  TestPiece hollow(String name, Box removed) {
    drafts
        .get(name)
        .cuts
        .add(
            new Cut.Trench(
                "notch", Face.TOP, removed, removed.size(Axis.Z), Optional.empty(), at()));
    return this;
  }

  TestPiece holes(String name, Face from, int count) {
    Draft draft = drafts.get(name);
    Box box = draft.shoulder;
    Point first = new Point(box.x().from(), box.y().from(), box.z().from());
    draft.cuts.add(
        new Cut.Holes(
            "hole",
            from,
            first.with(from.axis(), box.at(from)),
            draft.length,
            Length.mm(32),
            count,
            Length.mm(6),
            Length.mm(10),
            false,
            Optional.empty(),
            at()));
    return this;
  }

  TestPiece pocketHoles(String name, Face from, Face end) {
    Box box = drafts.get(name).shoulder;
    Point first = new Point(box.x().from(), box.y().from(), box.z().from());
    drafts
        .get(name)
        .cuts
        .add(
            new PocketHoles(
                "pocket hole",
                from,
                end,
                List.of(first.with(end.axis(), box.at(end))),
                Length.mm(9),
                Length.mm(4),
                15,
                Optional.empty(),
                at()));
    return this;
  }

  Piece piece() {
    lettings.forEach(Runnable::run);
    lettings.clear();
    List<Part> parts = drafts.entrySet().stream().map(e -> part(e.getKey(), e.getValue())).toList();
    return new Piece(description(), parts, marks(parts), joints);
  }

  private Part part(String name, Draft draft) {
    int dot = name.lastIndexOf('.');
    return new Part(
        name,
        draft.title,
        draft.mark,
        false,
        dot < 0 ? Optional.empty() : Optional.of(name.substring(0, dot)),
        draft.stock,
        draft.shoulder,
        draft.box,
        draft.length,
        draft.thickness,
        draft.cuts,
        solid(draft.box),
        Optional.empty(),
        at());
  }

  /** The build stage works on boxes; a solid is only carried along, so a plain box will do. */
  private static Solid solid(Box box) {
    try {
      return Solid.of(box);
    } catch (UnsupportedOperationException notYetThere) {
      return emptySolid();
    }
  }

  private static Solid emptySolid() {
    try {
      var made = Solid.class.getDeclaredConstructor();
      made.setAccessible(true);
      return made.newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Mark> marks(List<Part> parts) {
    Map<String, List<Part>> byMark = new LinkedHashMap<>();
    parts.forEach(part -> byMark.computeIfAbsent(part.mark(), m -> new ArrayList<>()).add(part));
    return byMark.entrySet().stream()
        .map(
            each ->
                new Mark(
                    each.getKey(),
                    each.getValue().getFirst().title(),
                    each.getValue().getFirst(),
                    each.getValue().size(),
                    0,
                    each.getValue().stream().map(Part::name).toList()))
        .toList();
  }

  private Description description() {
    Map<String, AssemblyEntry> assemblies = new LinkedHashMap<>();
    for (String name : drafts.keySet()) {
      int dot = name.lastIndexOf('.');
      if (dot > 0) {
        String assembly = name.substring(0, dot);
        assemblies.computeIfAbsent(
            assembly, a -> new AssemblyEntry(a, titled(a), at(), false, List.of()));
      }
    }
    return new Description(
        source,
        new About(
            new Located<>("Test piece", at()),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        format,
        Map.of(),
        stock,
        List.of(),
        List.of(),
        List.of(),
        assemblies,
        items,
        hardware,
        finish,
        shop(),
        build);
  }

  private static String titled(String name) {
    String words = name.replace('-', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static ShopEntry shop() {
    return new ShopEntry(
        Length.mm(3), Length.mm(6), Length.mm(25), Length.mm(6), Length.mm(330), 20, 6);
  }

  private Span at() {
    return Span.startOf(source);
  }
}
