package storyrod.planset;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Need;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.description.About;
import storyrod.description.Description;
import storyrod.description.Description.FinishEntry;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.description.Description.ItemKind;
import storyrod.description.Description.SheetSize;
import storyrod.description.Description.StockEntry;
import storyrod.description.Description.StockKind;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.description.ShopEntry;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.Drawings;
import storyrod.drawing.Scale;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;

/** A small bookcase, invented, as every stage would hand it over. */
record Sample(String title, Unit unit, int shelves) {
  private static final SourceText SOURCE = new SourceText("projects/case/project.yaml", "a: b\n");
  private static final Span AT = Span.startOf(SOURCE);
  private static final Length BOARD = Length.inch(23, 32);
  private static final Length TALL = Length.inches(28);
  private static final Length DEEP = Length.inch(31, 2);
  private static final Length WIDE = Length.inch(75, 2);

  static Sample inches() {
    return new Sample("Low bookcase", Unit.INCH, 2);
  }

  static Sample titled(String title) {
    return new Sample(title, Unit.INCH, 2);
  }

  Sample in(Unit other) {
    return new Sample(title, other, shelves);
  }

  Sample withShelves(int count) {
    return new Sample(title, unit, count);
  }

  private LengthFormat format() {
    return new LengthFormat(unit, 32);
  }

  PlanSet planSet() {
    Piece piece = piece();
    return new PlanSet(
        piece,
        findings(),
        stock(piece),
        build(piece),
        drawings(piece),
        new Figures(Optional.of(19.4)));
  }

  static StepText words(Step step) {
    return new StepText(
        step.verb() == Verb.FIT
            ? "Glue the left side to the bottom"
            : "Cut the dados in " + step.number(),
        List.of(
            "Brush glue on the dado of A and on the left end of C.",
            "Push A onto C, front edges flush, and clamp across the case with a spacer of 36 3/8 in.",
            "Measure both diagonals: 41 11/32 in each. Shift the clamps until they agree."),
        step.verb() == Verb.FIT
            ? List.of("Squeeze-out hides in the dado. Wear gloves; wipe before it skins over.")
            : List.of("Keep hands behind the blade guard; feed with a push block."),
        List.of("2 bar clamps, 40 in", "spacer", "glue brush"),
        List.of(
            new StepText.SettingText("Fence", "A", "9 1/4 in"),
            new StepText.SettingText("Depth", "", "3/8 in")),
        step.minutes() + " min",
        step.waitMinutes() == 0 ? "" : "1 h");
  }

  private StockEntry ply() {
    return new StockEntry(
        "ply",
        AT,
        StockKind.SHEET,
        "birch plywood",
        new Located<>(BOARD, AT),
        Optional.empty(),
        Optional.of(new SheetSize(Length.inches(96), Length.inches(48))),
        Optional.empty(),
        Optional.empty(),
        true);
  }

  private StockEntry ash() {
    return new StockEntry(
        "ash",
        AT,
        StockKind.SOLID,
        "ash, white",
        new Located<>(Length.inch(3, 4), AT),
        Optional.of(Length.inches(1)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        true);
  }

  private Piece piece() {
    List<Part> parts = new ArrayList<>();
    Range depth = new Range(Length.ZERO, DEEP);
    Range height = new Range(Length.ZERO, TALL);
    parts.add(
        part(
            "left-side",
            title.equals("Low bookcase") ? "Side" : title,
            "A",
            ply(),
            new Box(new Range(Length.ZERO, BOARD), depth, height),
            Axis.Z));
    parts.add(
        part(
            "right-side",
            "Side",
            "A",
            ply(),
            new Box(new Range(WIDE.minus(BOARD), WIDE), depth, height),
            Axis.Z));
    parts.add(
        part(
            "bottom",
            "Bottom",
            "B",
            ply(),
            new Box(
                new Range(Length.inch(3, 8), WIDE.minus(Length.inch(3, 8))),
                depth,
                new Range(Length.inches(3), Length.inches(3).plus(BOARD))),
            Axis.X));
    for (int i = 0; i < shelves; i++) {
      Length z = Length.inches(8).plus(Length.inch(3, 2).times(i));
      parts.add(
          part(
              "shelf-" + i,
              "Shelf",
              markOf(2 + i),
              ash(),
              new Box(
                  new Range(BOARD, WIDE.minus(BOARD)),
                  depth,
                  new Range(z, z.plus(Length.inch(3, 4)))),
              Axis.X));
    }
    return new Piece(description(parts), parts, marks(parts), List.of(joint(parts)));
  }

  private static String markOf(int index) {
    return index < 26 ? String.valueOf((char) ('A' + index)) : "A" + (char) ('A' + index - 26);
  }

  private static Part part(
      String name, String title, String mark, StockEntry stock, Box box, Axis length) {
    Axis thickness = length == Axis.Z ? Axis.X : Axis.Z;
    Face from = length == Axis.Z ? Face.RIGHT : Face.TOP;
    Cut.Holes holes =
        new Cut.Holes(
            "hole",
            from,
            new Point(box.x().to(), Length.inches(2), box.z().from().plus(Length.inches(5))),
            length == Axis.Z ? Axis.Z : Axis.Y,
            Length.inch(5, 4),
            5,
            Length.inch(1, 4),
            Length.inch(3, 8),
            false,
            Optional.of("pin"),
            AT);
    return new Part(
        name,
        title,
        mark,
        name.startsWith("right"),
        Optional.empty(),
        stock,
        box,
        box,
        length,
        thickness,
        mark.equals("A") ? List.of(holes) : List.of(),
        Solid.of(box),
        Optional.empty(),
        AT);
  }

  private static List<Mark> marks(List<Part> parts) {
    Map<String, List<Part>> byMark = new LinkedHashMap<>();
    parts.forEach(part -> byMark.computeIfAbsent(part.mark(), key -> new ArrayList<>()).add(part));
    return byMark.entrySet().stream()
        .map(
            entry -> {
              List<Part> same = entry.getValue();
              int mirrored = (int) same.stream().filter(Part::mirrored).count();
              return new Mark(
                  entry.getKey(),
                  same.getFirst().title(),
                  same.getFirst(),
                  same.size() - mirrored,
                  mirrored,
                  same.stream().map(Part::name).toList());
            })
        .toList();
  }

  private static Joint joint(List<Part> parts) {
    Box contact = parts.get(2).box().with(Axis.X, new Range(BOARD, BOARD));
    return new Joint(
        "dado",
        "bottom",
        Face.LEFT,
        "left-side",
        Face.LEFT,
        contact,
        true,
        true,
        List.of(new ItemCount("screw", 6)),
        Optional.empty(),
        AT);
  }

  private Description description(List<Part> parts) {
    Map<String, StockEntry> stock = new LinkedHashMap<>();
    stock.put("ply", ply());
    stock.put("ash", ash());
    Map<String, ItemEntry> items = new LinkedHashMap<>();
    items.put("screw", item("screw", "Wood screw #8 x 1 3/4 in", ItemKind.WOOD_SCREW));
    items.put("pin", item("pin", "Shelf pin 1/4 in", ItemKind.SHELF_PIN));
    return new Description(
        SOURCE,
        about(),
        format(),
        Map.of(),
        stock,
        List.of(),
        List.of(),
        List.of(),
        Map.of(),
        items,
        List.of(
            new HardwareEntry(
                AT,
                new Located<>("pin", AT),
                8,
                List.of(new Located<>(parts.get(3).name(), AT)),
                Optional.empty(),
                0,
                Optional.empty())),
        Optional.of(new FinishEntry(AT, "oil-based varnish", 3, 24, 220, Optional.empty())),
        new ShopEntry(
            Length.inch(1, 8),
            Length.inch(1, 4),
            Length.inches(1),
            Length.inch(1, 4),
            Length.inches(13),
            20,
            6),
        List.of());
  }

  private static ItemEntry item(String name, String title, ItemKind kind) {
    return new ItemEntry(
        name,
        AT,
        title,
        kind,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        20,
        Optional.empty());
  }

  private About about() {
    return new About(
        new Located<>(title, AT),
        Optional.of("Fernhill Workshop, demo"),
        Optional.of("Two shelves between two sides, low enough to sit under a window."),
        Optional.of("3"),
        Optional.of(LocalDate.of(2026, 11, 25)));
  }

  private static List<Diagnostic> findings() {
    return List.of(
        Diagnostic.warning("shelf-sag", AT, "the shelf sags 3/32 in under 35 lb per foot")
            .hint("make the shelf 1 in thick, or 32 in long"),
        Diagnostic.advice("grain-match", AT, "both sides fit side by side on one sheet"));
  }

  private StockPlan stock(Piece piece) {
    List<StockPlan.RoughPart> rough =
        piece.marks().stream()
            .map(
                mark -> {
                  Length extra =
                      mark.shown().stock().kind() == StockKind.SOLID
                          ? Length.inches(1)
                          : Length.ZERO;
                  return new StockPlan.RoughPart(
                      mark.mark(),
                      mark.count(),
                      mark.shown().finishedLength().plus(extra),
                      mark.shown().finishedWidth().plus(extra.isZero() ? extra : Length.inch(1, 4)),
                      extra.isZero() ? mark.shown().finishedThickness() : extra);
                })
            .toList();
    return new StockPlan(
        rough,
        List.of(
            new StockPlan.BoardNeed(
                ash(),
                Rational.of(new BigDecimal("8.53")),
                Rational.of(new BigDecimal("10.3")),
                20,
                Optional.of(Rational.of(new BigDecimal("80.34"))))),
        List.of(
            new StockPlan.SheetPlan(ply(), List.of(sheet()), 1, Optional.of(Rational.of(92, 1)))),
        List.of(
            new StockPlan.HardwareNeed(
                "screw", "Wood screw #8 x 1 3/4 in", 6, 1, 20, Optional.empty()),
            new StockPlan.HardwareNeed(
                "pin",
                "Shelf pin 1/4 in",
                8,
                1,
                20,
                Optional.of(Rational.of(new BigDecimal("4.20"))))));
  }

  private static StockPlan.SheetLayout sheet() {
    List<StockPlan.Placed> placed =
        List.of(
            new StockPlan.Placed("A", "left-side", area(0, TALL), false),
            new StockPlan.Placed("A", "right-side", area(29, TALL), false),
            new StockPlan.Placed("B", "bottom", area(58, Length.inches(37)), false));
    List<StockPlan.SawCut> cuts = new ArrayList<>();
    for (int i = 1; i <= 7; i++) {
      cuts.add(
          new StockPlan.SawCut(
              i,
              i % 3 == 1,
              Length.inches(5 * i),
              Length.ZERO,
              Length.inches(48),
              Length.inch(31 + 9 * i, 2)));
    }
    return new StockPlan.SheetLayout(
        Length.inches(96),
        Length.inches(48),
        placed,
        cuts,
        List.of(
            new StockPlan.Area(
                Length.ZERO, Length.inches(16), Length.inches(96), Length.inches(32))));
  }

  private static StockPlan.Area area(long x, Length length) {
    return new StockPlan.Area(Length.inches(x), Length.ZERO, length, DEEP);
  }

  private BuildPlan build(Piece piece) {
    List<Step> steps = new ArrayList<>();
    Stage milling = new Stage("own", Optional.of("Milling"));
    Stage joinery = new Stage("own", Optional.of("Case & joinery"));
    for (Mark mark : piece.marks()) {
      steps.add(step(steps.size() + 1, milling, Verb.CUT, mark.parts(), List.of()));
    }
    steps.add(
        step(
            steps.size() + 1,
            joinery,
            Verb.FIT,
            List.of("bottom", "left-side"),
            List.of("left-side")));
    steps.add(
        step(
            steps.size() + 1,
            joinery,
            Verb.FIT,
            List.of("bottom", "right-side"),
            List.of("right-side")));
    return new BuildPlan(
        steps, List.of(new Need("cut bottom", "fit left-side", "machine-before-glue")));
  }

  private static Step step(
      int number, Stage stage, Verb verb, List<String> parts, List<String> arriving) {
    Operation operation =
        new Operation(verb, parts.getFirst(), parts, List.of(), List.of(), List.of(), 12, 0);
    boolean fit = verb == Verb.FIT;
    return new Step(
        number,
        stage,
        List.of(operation),
        arriving,
        List.of(),
        Optional.empty(),
        fit ? List.of(new ItemCount("screw", 6)) : List.of(),
        List.of(),
        List.of(),
        List.of(),
        fit ? List.of("Keep the better face outwards.") : List.of(),
        12 + number,
        fit ? 60 : 0);
  }

  private Drawings drawings(Piece piece) {
    Map<String, Drawing> parts = new LinkedHashMap<>();
    piece.marks().forEach(mark -> parts.put(mark.mark(), partDrawing(mark)));
    Map<Integer, Drawing> steps = new LinkedHashMap<>();
    steps.put(piece.marks().size() + 1, view("step", 150, 95, "A"));
    steps.put(piece.marks().size() + 2, view("step", 150, 95, "A"));
    return new Drawings(
        view("cover", 165, 118, ""),
        view("exploded", 170, 160, "B"),
        parts,
        Map.of("ply", List.of(view("layout", 175, 90, "A"))),
        steps);
  }

  private Drawing partDrawing(Mark mark) {
    double width = mark.shown().finishedLength().toMm() / 8;
    double height = mark.shown().finishedWidth().toMm() / 8;
    List<Element> elements = new ArrayList<>(plate(18, 16, width, height, Tone.FRONT));
    elements.add(
        new Dimension(
            new At(18, 16),
            new At(18 + width, 16),
            true,
            7,
            format().format(mark.shown().finishedLength()),
            mark.shown().finishedLength()));
    elements.add(
        new Dimension(
            new At(18, 16),
            new At(18, 16 + height),
            false,
            8,
            format().format(mark.shown().finishedWidth()),
            mark.shown().finishedWidth()));
    return new Drawing(
        "part-" + mark.mark(), width + 34, height + 22, Optional.of(new Scale(1, 8)), elements);
  }

  private static Drawing view(String name, double width, double height, String balloon) {
    List<Element> elements = new ArrayList<>();
    elements.addAll(plate(2, 2, width - 4, height - 4, Tone.TOP));
    elements.addAll(plate(width * 0.2, height * 0.2, width * 0.6, height * 0.6, Tone.SIDE));
    if (!balloon.isEmpty()) {
      elements.add(
          new Balloon(
              new At(width * 0.1, height * 0.12), new At(width * 0.3, height * 0.4), balloon));
    }
    elements.add(
        new Text(TextStyle.NOTE, new At(width / 2, height / 2), Anchor.MIDDLE, true, "36 3/8"));
    return new Drawing(name, width, height, Optional.empty(), elements);
  }

  private static List<Element> plate(double x, double y, double width, double height, Tone tone) {
    List<At> ring =
        List.of(
            new At(x, y),
            new At(x + width, y),
            new At(x + width, y + height),
            new At(x, y + height));
    List<At> closed = new ArrayList<>(ring);
    closed.add(ring.getFirst());
    return List.of(new Area(tone, List.of(ring)), new Line(Role.VISIBLE, closed));
  }
}
