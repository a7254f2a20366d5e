package storyrod.planset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.description.About;
import storyrod.description.Description;
import storyrod.description.Diagnostic;
import storyrod.description.FinishEntry;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.description.SheetSize;
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
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A small bookcase, invented, as every stage would hand it over. */
record Sample(String title, Unit unit, int shelves) {
  private static final SourceText SOURCE = new SourceText("projects/case/project.yaml", "a: b\n");
  static final Span AT = Span.startOf(SOURCE);
  static final Length BOARD = Length.inch(23, 32);
  static final Length TALL = Length.inches(28);
  static final Length DEEP = Length.inch(31, 2);
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
        SampleStock.of(piece),
        SampleBuild.of(piece),
        SampleDrawings.of(piece),
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
        Stream.of("2 bar clamps, 40 in", "spacer", "glue brush")
            .map(tool -> new StepText.ToolText(tool, tool))
            .toList(),
        List.of(
            new StepText.SettingText("Fence", "A", "9 1/4 in"),
            new StepText.SettingText("Depth", "", "3/8 in")),
        step.minutes() + " min",
        step.waitMinutes() == 0 ? "" : "1 h");
  }

  static StockEntry ply() {
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

  static StockEntry ash() {
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
              SampleParts.markOf(2 + i),
              ash(),
              new Box(
                  new Range(BOARD, WIDE.minus(BOARD)),
                  depth,
                  new Range(z, z.plus(Length.inch(3, 4)))),
              Axis.X));
    }
    return new Piece(
        description(parts), parts, SampleParts.marks(parts), List.of(SampleParts.joint(parts)));
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
}
