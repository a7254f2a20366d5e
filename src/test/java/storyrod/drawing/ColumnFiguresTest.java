package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.cli.PrintedProjects;
import storyrod.measure.Units;
import storyrod.planset.PlanSet;

/** What is drawn in the column below a step's lists has room there. */
class ColumnFiguresTest {
  private static final double COLUMN_MM = 54;

  /** In both units the figures of thin boards are longer than what they measure. */
  @TestFactory
  Stream<DynamicTest> blanksThatAreMilledStayInTheColumn() {
    return Stream.of("bookcase", "sewing-box", "sideboard")
        .flatMap(
            name ->
                Stream.of(Units.INCH, Units.MM, Units.BOTH)
                    .map(
                        units ->
                            DynamicTest.dynamicTest(
                                name + " " + units,
                                () -> assertInColumn(PrintedProjects.named(name, units)))));
  }

  private static void assertInColumn(PrintedProjects printed) {
    PlanSet set = printed.drawn(printed.usualPaper(), "publish");
    List<MillFigure> all =
        steps(set, Verb.MILL)
            .flatMap(step -> step.targets().stream())
            .flatMap(name -> MillFigure.of(set.piece(), set.piece().part(name)).stream())
            .toList();
    assertFalse(all.isEmpty());
    for (MillFigure each : all) {
      Size room = new Size(COLUMN_MM, each.heightMm(COLUMN_MM));
      Bounds cell = new Bounds(0, 0, room.widthMm(), room.heightMm());
      Paper paper = new Paper();
      Clean.flat(each.in(cell)).forEach(paper::add);
      Bounds taken = paper.bounds();
      assertTrue(taken.left() >= 0 && taken.right() <= COLUMN_MM, each.mark() + ": " + taken);
    }
  }

  /** Its sizes have no room in a column. */
  @Test
  void blankThatIsSawnApartStandsAboveTheSentencesOrNowhere() {
    PlanSet set = AllProjects.named("sideboard");
    Step sawn = steps(set, Verb.KEEP).findFirst().orElseThrow();
    BoardPicture picture = BoardPicture.of(set.piece(), sawn).orElseThrow();
    assertEquals(Double.POSITIVE_INFINITY, picture.heightMm(COLUMN_MM));
    assertTrue(picture.heightMm(180) < 100);
  }

  private static Stream<Step> steps(PlanSet set, Verb verb) {
    return set.build().steps().stream().filter(step -> step.verb() == verb);
  }
}
