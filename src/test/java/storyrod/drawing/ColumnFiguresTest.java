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
import storyrod.piece.Piece;
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

  /** One panel can still be read there; several would be stamps. */
  @TestFactory
  List<DynamicTest> onlyLonePanelsThatAreCutToSizeHaveRoomInTheColumn() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          steps(sample.set(), Verb.SIZE)
              .filter(step -> BoardPicture.isShown(piece, step))
              .filter(step -> BoardPicture.isOfPanels(piece, step))
              .flatMap(step -> BoardPicture.of(piece, step).stream())
              .forEach(ColumnFiguresTest::assertAlone);
        });
  }

  private static void assertAlone(BoardPicture picture) {
    Drawing wide = picture.drawn(new Size(190, 120));
    boolean isLone =
        Clean.flat(wide.elements()).stream().filter(Drawing.Balloon.class::isInstance).count() == 1;
    assertEquals(isLone, picture.heightMm(COLUMN_MM) < 60, "step " + picture.step());
  }

  /** Level it would be but 29 mm high; the layers of a leg lie in a bar that is 2 mm thin so. */
  @TestFactory
  Stream<DynamicTest> lonePanelsStandUprightInTheColumn() {
    PlanSet set = AllProjects.named("dining-table");
    return steps(set, Verb.SIZE)
        .filter(step -> BoardPicture.isShown(set.piece(), step))
        .flatMap(step -> BoardPicture.of(set.piece(), step).stream())
        .map(
            picture ->
                DynamicTest.dynamicTest("step " + picture.step(), () -> assertUpright(picture)));
  }

  private static void assertUpright(BoardPicture picture) {
    double high = picture.heightMm(COLUMN_MM);
    Drawing drawn = picture.drawn(new Size(COLUMN_MM, high));
    List<Drawing.Dimension> sizes =
        Clean.flat(drawn.elements()).stream()
            .filter(Drawing.Dimension.class::isInstance)
            .map(Drawing.Dimension.class::cast)
            .toList();
    assertEquals(2, sizes.size());
    Drawing.Dimension level =
        sizes.stream().filter(Drawing.Dimension::alongX).findAny().orElseThrow();
    Drawing.Dimension down = sizes.stream().filter(each -> !each.alongX()).findAny().orElseThrow();
    assertTrue(down.measure().compareTo(level.measure()) > 0);
    assertEquals(
        down.measure().toMm() / level.measure().toMm(),
        down.from().distance(down.to()) / level.from().distance(level.to()),
        0.01);
    assertTrue(drawn.heightMm() > 42, drawn.heightMm() + "");
  }

  private static Stream<Step> steps(PlanSet set, Verb verb) {
    return set.build().steps().stream().filter(step -> step.verb() == verb);
  }
}
