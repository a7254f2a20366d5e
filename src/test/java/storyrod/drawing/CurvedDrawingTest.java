package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Range;
import storyrod.geometry.Seam;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** The drawings of a bench with curves: its description stands under test resources. */
class CurvedDrawingTest {
  private static final Piece BENCH =
      WindowBench.piece(Path.of("src/test/resources/projects/hall-bench/project.yaml"));

  /** The chord of the hollow under the front apron, 34 1/4 less 3 at each end, and its rise. */
  private static final double CHORD = 28.25;

  private static final double RISE = 1.5;

  private static Drawing drawing(String part) {
    return PartDrawing.draw(BENCH.mark(BENCH.part(part).mark()), BENCH, WindowBench.PART_AREA);
  }

  @TestFactory
  List<DynamicTest> nothingLiesOnATextOrOutsideThePaper() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Mark mark : BENCH.marks()) {
      Drawing drawing = PartDrawing.draw(mark, BENCH, WindowBench.PART_AREA);
      tests.add(
          DynamicTest.dynamicTest(
              mark.title(), () -> assertEquals(List.of(), Clean.faults(drawing))));
    }
    return tests;
  }

  @Test
  void theHollowIsDrawnAsTheTrueArc() {
    Drawing drawing = drawing("front-apron");
    double scale = drawing.scale().orElseThrow().factor() * 25.4;
    double radius = (CHORD * CHORD / (8 * RISE) + RISE / 2) * scale;
    List<At> arc = new ArrayList<>();
    for (Line line : lines(drawing)) {
      List<At> on = onArc(line.points(), radius);
      arc = on.size() > arc.size() ? on : arc;
    }
    assertEquals(CHORD * scale, arc.getFirst().distance(arc.getLast()), 0.05);
    for (int i = 0; i + 1 < arc.size(); i++) {
      double chord = arc.get(i).distance(arc.get(i + 1));
      assertTrue(chord * chord / 8 / radius < 0.02, "a chord of " + chord + " mm on paper");
    }
  }

  /** A strip of which 1200 of 1400 mm are hollow has no plain stretch worth leaving out. */
  @Test
  void noBreakIsMadeInACurve() {
    Piece piece =
        Pieces.of(
            """
            parts:
              strip: {stock: ply6, x: 0 to 1400, y: 0 to 6, z: 0 to 20, grain: x, outline: [hollow: {edge: bottom, x: 100 to 1300, rise: 9}]}
            """);
    Drawing drawing = PartDrawing.draw(piece.marks().getFirst(), piece, WindowBench.PART_AREA);
    double factor = drawing.scale().orElseThrow().factor();
    Dimension length =
        Clean.dimensions(drawing).stream()
            .filter(each -> each.measure().equals(Length.mm(1400)))
            .findFirst()
            .orElseThrow();
    assertEquals(1400 * factor, length.from().distance(length.to()), 0.01);
  }

  @Test
  void aStretchThatEndsInABreakIsShownUpToIt() {
    Ruler ruler = new Ruler(1, List.of(mm(100, 200)));
    assertEquals(List.of(mm(50, 100)), ruler.shown(mm(50, 150)));
    assertEquals(List.of(mm(200, 300)), ruler.shown(mm(150, 300)));
    assertEquals(List.of(), ruler.shown(mm(120, 180)));
    assertEquals(List.of(mm(50, 100), mm(200, 300)), ruler.shown(mm(50, 300)));
  }

  private static Range mm(int from, int to) {
    return new Range(Length.mm(from), Length.mm(to));
  }

  /** The longest run of points that lie on a circle of some radius. */
  private static List<At> onArc(List<At> points, double radius) {
    List<At> best = new ArrayList<>();
    for (int i = 0; i + 2 < points.size(); i++) {
      List<At> run = new ArrayList<>(points.subList(i, i + 2));
      for (int j = i + 2; j < points.size() && turns(points, j, radius); j++) {
        run.add(points.get(j));
      }
      best = run.size() > best.size() ? run : best;
    }
    return best;
  }

  private static boolean turns(List<At> points, int last, double radius) {
    At a = points.get(last - 2);
    At b = points.get(last - 1);
    At c = points.get(last);
    double area = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    double found = a.distance(b) * b.distance(c) * c.distance(a) / (2 * Math.abs(area));
    return Math.abs(found - radius) < 0.2 * radius;
  }

  private static List<Line> lines(Drawing drawing) {
    return Clean.flat(drawing.elements()).stream()
        .filter(Line.class::isInstance)
        .map(Line.class::cast)
        .filter(line -> line.role() == Role.VISIBLE)
        .toList();
  }

  @Test
  void theHollowIsMeasuredByItsEndsItsRiseAndItsRadius() {
    Drawing drawing = drawing("front-apron");
    List<Length> given = Clean.dimensions(drawing).stream().map(Dimension::measure).toList();
    assertTrue(given.contains(Length.inch(3, 2)), given.toString());
    assertEquals(2, given.stream().filter(Length.inches(3)::equals).count());
    double radius = CHORD * CHORD / (8 * RISE) + RISE / 2;
    assertEquals(67.255, radius, 0.001);
    assertTrue(Clean.notes(drawing).contains("R ≈ 67 1/4"), Clean.notes(drawing));
  }

  @Test
  void notesNameSlotsRoundCornersAndRoundovers() {
    String side = Clean.notes(drawing("left-side"));
    assertTrue(side.contains("slot, ends R 5/8, through"), side);
    assertTrue(side.contains("R 1/4 roundover, all round the left face"), side);
    assertTrue(Clean.notes(drawing("back-apron")).contains("2× R 1 1/4"));
    String seat = Clean.notes(drawing("seat"));
    assertTrue(seat.contains("R 1/4 roundover, front, back edges of the top face"), seat);
  }

  @TestFactory
  List<DynamicTest> noFacetLineIsDrawnFromAnySide() {
    List<DynamicTest> tests = new ArrayList<>();
    for (int x : new int[] {-1, 1}) {
      for (int y : new int[] {-1, 1}) {
        for (int z : new int[] {-1, 1}) {
          View view = View.isometric(x, y, z);
          tests.add(
              DynamicTest.dynamicTest(
                  "from %d, %d, %d".formatted(x, y, z), () -> assertNoFacetLines(view)));
        }
      }
    }
    return tests;
  }

  private static void assertNoFacetLines(View view) {
    for (String part : List.of("left-side", "front-apron", "bracket")) {
      Solid solid = BENCH.part(part).solid();
      Scene.Item item = new Scene.Item(part, solid, Vector3D.ZERO);
      Seen.Lines lines =
          HiddenLines.of(new Scene(List.of(item)), view).seenAndHidden().getFirst().lines();
      List<Stroke> all = new ArrayList<>(lines.visible());
      all.addAll(lines.hidden());
      List<Seam> smooth =
          solid.seams().stream().filter(seam -> seam.isSmooth(view.toViewer())).toList();
      assertTrue(smooth.size() > 5, part);
      for (Seam seam : smooth) {
        Stroke facet = new Stroke(view.project(seam.from()), view.project(seam.to()));
        assertTrue(all.stream().noneMatch(stroke -> isSame(stroke, facet)), part + " " + seam);
      }
    }
  }

  private static boolean isSame(Stroke one, Stroke two) {
    return one.from().distance(two.from()) < 0.1 && one.to().distance(two.to()) < 0.1
        || one.from().distance(two.to()) < 0.1 && one.to().distance(two.from()) < 0.1;
  }
}
