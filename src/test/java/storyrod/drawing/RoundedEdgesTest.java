package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.RoundedEdges.Stretch;
import storyrod.geometry.Box;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Solid;
import storyrod.piece.Cut;

/** The edges that a step rounds, as they are found and as they are drawn. */
class RoundedEdgesTest {
  private static final Edge FRONT_TOP = new Edge(Face.FRONT, Face.TOP);
  private static final Edge LEFT_TOP = new Edge(Face.LEFT, Face.TOP);

  /** A plank of 16 x 1 x 4 in, the top at the front left notched by 2 x 1. */
  private static Solid plank() {
    Box whole = BenchParts.box(0, in(16), 0, in(1), 0, in(4));
    return Solid.of(whole).minus(List.of(BenchParts.box(0, in(2), 0, in(1), in(3), in(4))));
  }

  private static int in(double inches) {
    return BenchParts.in(inches);
  }

  private static Cut.Roundover cut(boolean around, List<Edge> edges) {
    return new Cut.Roundover(
        "roundover", Face.TOP, edges, around, BenchParts.at(8), BenchParts.NOWHERE);
  }

  private static double inches(List<Stretch> all) {
    return all.stream().mapToDouble(each -> each.from().distance(each.to())).sum() / 25.4;
  }

  @Test
  void aroundAFaceIsItsWholeOutline() {
    assertEquals(2 * (14 + 1), inches(new RoundedEdges(plank()).of(cut(true, List.of()))), 1e-9);
  }

  /** An end that is notched is rounded where the wood ends. */
  @Test
  void anEdgeIsWhereTheWoodEndsOnThatSide() {
    RoundedEdges edges = new RoundedEdges(plank());
    List<Stretch> front = edges.of(cut(false, List.of(FRONT_TOP)));
    assertEquals(16, inches(front), 1e-9, "with the floor of the notch");
    List<Stretch> left = edges.of(cut(false, List.of(LEFT_TOP)));
    Map<Double, List<Stretch>> byX =
        left.stream().collect(Collectors.groupingBy(each -> Math.rint(each.from().getX())));
    assertTrue(byX.keySet().stream().allMatch(x -> x == 0), byX.toString());
  }

  @TestFactory
  List<DynamicTest> whatAStepRoundsIsStrongWithItsRadius() {
    return AllProjects.each(
        project ->
            project.set().build().steps().stream()
                .filter(RoundedEdgesTest::rounds)
                .forEach(step -> assertShown(project, step)));
  }

  private static boolean rounds(Step step) {
    return step.operations().stream()
        .flatMap(each -> each.cuts().stream())
        .anyMatch(Cut.Roundover.class::isInstance);
  }

  private static void assertShown(AllProjects.Sample project, Step step) {
    CutPicture picture =
        CutPicture.of(project.set().piece(), project.set().build(), step).orElseThrow();
    Drawing whole = picture.drawn(new Size(180, Strip.MOST_MM));
    List<Element> drawn = Clean.flat(whole.elements());
    String where = project.name() + " " + step.number();
    assertTrue(drawn.stream().anyMatch(RoundedEdgesTest::isStrong), where);
    String said =
        drawn.stream()
            .flatMap(each -> each instanceof Note note ? note.lines().stream() : Stream.empty())
            .collect(Collectors.joining());
    assertTrue(said.matches("R .+ roundover"), where + said);
    assertTrue(right(whole) <= 180, where + " stays in its room: " + right(whole));
  }

  private static double right(Drawing drawing) {
    return Painter.texts(drawing).stream().mapToDouble(PlacedText::right).max().orElseThrow();
  }

  private static boolean isStrong(Element element) {
    return element instanceof Line line && line.role() == Role.VISIBLE;
  }

  /** A line of a view belongs to a stretch only where all of it lies on that. */
  @Test
  void aLineBeyondAStretchIsNotOnIt() {
    View view = View.AROUND.getFirst();
    Stretch stretch = new Stretch(Vector3D.ZERO, Vector3D.of(100, 0, 0));
    assertTrue(stretch.has(stroke(view, 20, 100), view));
    assertTrue(!stretch.has(stroke(view, 20, 120), view));
  }

  private static Seen.Stroke stroke(View view, double from, double to) {
    return new Seen.Stroke(
        view.project(Vector3D.of(from, 0, 0)), view.project(Vector3D.of(to, 0, 0)));
  }
}
