package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FaceMarks;
import storyrod.build.ShowFaces;
import storyrod.build.Verb;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;
import storyrod.words.Words;

/** Pictures of parts that are sawn to size and marked. */
class SizedMarksTest {
  /** Where one figure stands for all parts of one size, the others are named too. */
  @TestFactory
  List<DynamicTest> everyPartSawnToSizeIsNamed() {
    return AllProjects.each(
        sample ->
            sample.set().build().steps().stream()
                .filter(step -> step.verb() == Verb.SIZE)
                .forEach(step -> assertNamesAll(sample.set(), step)));
  }

  private static void assertNamesAll(PlanSet set, Step step) {
    new RoughBoards(set.piece(), step)
        .worked()
        .ifPresent(
            strip -> {
              Set<String> named = new TreeSet<>();
              for (Drawing.Element each : strip.drawn("s", new Size(180, 20)).elements()) {
                if (each instanceof Balloon balloon) {
                  named.add(balloon.mark());
                } else if (each instanceof Text text) {
                  String said = text.text().replaceFirst("not drawn: ", "");
                  named.addAll(List.of(said.split(", ")));
                }
              }
              Set<String> marks =
                  step.targets().stream()
                      .map(name -> set.piece().part(name))
                      .filter(part -> BoardPlan.ripped(set.piece(), part).isPresent())
                      .map(part -> part.mark())
                      .collect(Collectors.toCollection(TreeSet::new));
              assertTrue(named.containsAll(marks), step.number() + " " + marks + " " + named);
            });
  }

  /** An arrow longer than its board would say that something goes on. */
  @TestFactory
  List<DynamicTest> grainArrowsStayOnTheirBoards() {
    return AllProjects.each(
        sample ->
            sample.set().build().steps().stream()
                .filter(step -> step.verb() == Verb.SIZE)
                .flatMap(step -> new RoughBoards(sample.set().piece(), step).worked().stream())
                .map(strip -> strip.drawn("s", new Size(180, strip.heightMm(180))))
                .flatMap(drawn -> drawn.elements().stream())
                .filter(Group.class::isInstance)
                .forEach(board -> assertWithin((Group) board)));
  }

  private static void assertWithin(Group board) {
    List<Drawing.Element> all = Clean.flat(board.elements());
    double right =
        all.stream()
            .filter(each -> each instanceof Line line && line.role() == Role.VISIBLE)
            .mapToDouble(each -> Bounds.around(((Line) each).points()).right())
            .max()
            .orElseThrow();
    all.stream()
        .filter(each -> each instanceof Arrow arrow && arrow.from().y() == arrow.to().y())
        .forEach(each -> assertTrue(((Arrow) each).to().x() < right, board.mark() + " " + each));
  }

  /** The word alone does not say which way the grain runs. */
  @TestFactory
  List<DynamicTest> grainOfABlankIsAnArrow() {
    return AllProjects.each(
        sample ->
            sample
                .set()
                .drawings()
                .blanks()
                .forEach(
                    (mark, drawing) ->
                        assertTrue(
                            Clean.flat(drawing.elements()).stream()
                                .anyMatch(each -> each instanceof Arrow arrow && arrow.twoHeads()),
                            mark)));
  }

  /** The lower edge of the stool's stretcher is sawn to a curve: no mark would stay on it. */
  @Test
  void edgeMarkGoesOnTheEdgeThatStays() {
    Piece piece = AllProjects.named("step-stool").piece();
    assertEquals(List.of(true, false), List.of(isAbove(piece, "C"), isAbove(piece, "B")));
  }

  private static boolean isAbove(Piece piece, String mark) {
    FaceMarks faces = new FaceMarks(new ShowFaces(piece));
    MarkTile tile = MarkTile.of(piece.mark(mark), faces, Words.ENGLISH);
    Bounds room = new Bounds(0, 0, 40, 20);
    List<Drawing.Element> all = Clean.flat(tile.in(room));
    double part =
        all.stream()
            .filter(each -> each instanceof Line line && line.role() == Role.VISIBLE)
            .mapToDouble(each -> Bounds.around(((Line) each).points()).middle().y())
            .findFirst()
            .orElseThrow();
    double wedge =
        all.stream()
            .filter(each -> each instanceof Line line && line.role() == Role.CUT)
            .mapToDouble(each -> Bounds.around(((Line) each).points()).middle().y())
            .findFirst()
            .orElseThrow();
    return wedge < part;
  }
}
