package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What steps tell fits the size and the place of the work. */
class ToldForTheWorkTest {
  private static List<StepText> table;
  private static List<StepText> bookcase;
  private static List<StepText> nightstand;
  private static List<StepText> box;

  @BeforeAll
  static void write() throws IOException {
    table = StepWordsTest.steps("dining-table");
    bookcase = StepWordsTest.steps("bookcase");
    nightstand = StepWordsTest.steps("nightstand");
    box = StepWordsTest.steps("sewing-box");
  }

  private static StepText step(List<StepText> steps, String title) {
    return steps.stream()
        .filter(step -> step.title().equals(title))
        .findFirst()
        .orElseThrow(() -> new AssertionError(title));
  }

  /** The place of the first sentence with some words. */
  private static int told(StepText step, String words) {
    for (int i = 0; i < step.sentences().size(); i++) {
      if (step.sentences().get(i).contains(words)) {
        return i;
      }
    }
    throw new AssertionError(words + " in " + step);
  }

  private static void assertSilent(StepText step, String words) {
    assertTrue(step.sentences().stream().noneMatch(each -> each.contains(words)), step::toString);
  }

  @Test
  void sawAndRouterAreLedOverALargePanel() {
    StepText sized = step(table, "Plane the slab and cut it to size");
    assertTrue(told(sized, "with a helper") < told(sized, "with the track saw"));
    assertSilent(sized, "fence");
    assertTrue(sized.tools().stream().noneMatch("table saw"::equals), sized::toString);
    StepText tongues = step(table, "Cut the tongues on the slab");
    told(tongues, "Clamp a straightedge across the slab (D)");
    assertTrue(tongues.tools().stream().noneMatch("table saw"::equals), tongues::toString);
    told(step(bookcase, "Plane the top and cut it to size"), "with that edge against the fence");
  }

  /** Frames before a case have edges and backs that no step before the finish sands. */
  @Test
  void whatShowsInsideIsSandedBeforeTheFinish() {
    String inside = "the edges and backs that show inside when the piece is open";
    told(step(nightstand, "Finish the piece"), inside);
    assertSilent(step(table, "Finish the piece"), inside);
  }

  @Test
  void lapsAreSparedWhereThereAreLaps() throws IOException {
    for (List<StepText> steps : List.of(bookcase, nightstand, table)) {
      steps.stream()
          .filter(each -> each.title().startsWith("Sand "))
          .forEach(each -> assertSilent(each, "a lap that loses a shaving"));
    }
    assertTrue(
        box.stream()
            .flatMap(each -> each.sentences().stream())
            .anyMatch(each -> each.contains("a lap that loses a shaving")));
  }

  @Test
  void diagonalsAreMeasuredAfterTheCut() {
    StepText sized = step(bookcase, "Plane the top and cut it to size");
    assertTrue(told(sized, "Cut B to the sizes") < told(sized, "Measure the two diagonals"));
  }

  @Test
  void theTriangleIsDrawnAnewOnPlanedFaces() {
    StepText glued = step(bookcase, "Glue up the boards for the top");
    assertTrue(told(glued, "Plane the boards") < told(glued, "draw the triangle anew"));
  }

  @Test
  void aGrooveForATongueIsTriedWithAScrapAndCutInPasses() {
    StepText grooves = step(table, "Cut the grooves in the breadboard ends");
    told(grooves, "Plane a scrap to 3/8 in and try it there");
    told(grooves, "Cut it in several passes");
    assertSilent(grooves, "Try the part");
  }

  @Test
  void looseTenonsAreGluedIntoThePartThatIsNamed() {
    told(
        step(box, "Glue the long rails, the long stretcher and the right end to the left end"),
        "the mortises in the long stretcher (G), and set the two loose tenons there first");
  }

  @Test
  void splinesAreTrimmedAndTheirSlotsLeaveRoomForGlue() {
    StepText frame = step(box, "Glue up the top frame");
    told(frame, "saw off the ends of the splines");
    assertTrue(frame.tools().contains("flush-cut saw"), frame::toString);
    told(
        step(box, "Cut the spline slots in the long frame pieces and the short frame pieces"),
        "1/4 in wide and 13/32 in deep");
  }

  @Test
  void endGrainIsNamedOnlyWhereItIsRounded() {
    assertSilent(
        step(box, "Round over the edges in the long frame pieces and the short frame pieces"),
        "end grain");
    told(step(bookcase, "Round over the edges in the top"), "across the end grain first");
  }

  @Test
  void pegsAreDrivenFromTheUndersideUnderClampsThatAreCounted() {
    StepText pegged = step(table, "Fasten the breadboard ends to the slab");
    int clamps = told(pegged, "they open 70 in");
    assertTrue(told(pegged, "the underside up") < clamps);
    assertTrue(clamps < told(pegged, "drive in the six oak pegs"));
    told(pegged, "pare the ends flush");
    assertTrue(pegged.tools().contains("glue and brush"), pegged::toString);
  }

  @Test
  void slidesGetTwoScrewsOnTrialAndTheRestForGood() {
    StepText trial = step(nightstand, "Fit the drawer slides and hang drawers 1 to 3 on trial");
    assertTrue(told(trial, "Mark its front and back holes") < told(trial, "for these two"));
    StepText again = step(nightstand, "Put the drawer slides back");
    told(again, "drive the rest of the 36 screws");
    assertTrue(again.tools().containsAll(List.of("drill", "pilot bit")), again::toString);
  }

  @Test
  void washersGoOnBeforeTheScrewsAreDriven() {
    StepText top = step(bookcase, "Screw the top to the front stretcher and the back stretcher");
    assertTrue(told(top, "Put a washer on") < told(top, "Drive the six screws"));
  }

  @Test
  void bradsThatAreSeenAreSetAndFilled() {
    told(step(bookcase, "Glue the shelf strips to the shelves"), "fill the holes: they are seen");
    assertSilent(step(bookcase, "Fasten the back in place"), "fill the holes");
  }

  @Test
  void aWedgeAndASawLieReadyWhereALegMayBeShort() {
    assertEquals(List.of("thin wedges", "fine handsaw"), step(box, "Set up the stand").tools());
  }

  @Test
  void partsThatAreNotFlushGetTheirOwnDistances() {
    StepText biscuits =
        step(box, "Cut the biscuit slots in the long frame pieces and the long rails");
    told(biscuits, "Set the fence on the two long rails (F) to 3/8 in from the");
    told(biscuits, "flush, and each has its own distance");
    assertSilent(biscuits, "come out flush");
    told(
        step(box, "Rout the mortises for the loose tenons in the long stretcher"),
        "Set the guide on the long stretcher (G) to");
  }

  @Test
  void whatIsSetUnderABottomIsMeasuredFromAnEdgeThatCanBeTouched() {
    StepText stand = step(nightstand, "Screw the stand to the bottom");
    told(stand, "16 mm inwards from the left face of the left side (A)");
    assertSilent(stand, "on the left side (A): ");
    assertSilent(stand, "flush with the bottom (C) at the front");
    told(stand, "20 mm inwards from the front");
  }

  @Test
  void aTopThatIsLaidOnIsSetByItsOverhangs() {
    StepText top = step(bookcase, "Screw the top to the front stretcher and the back stretcher");
    told(top, "Let the top (B) stand out 3/4 in past the left side strip (C) at the front");
    assertSilent(top, "Mark the place");
  }

  @Test
  void clampsOnTheSamePartsAreToldOnce() {
    told(
        step(box, "Glue the long rails, the long stretcher and the right end to the left end"),
        "the jaws on the left end and the right end, in line with the parts between: they open");
  }

  @Test
  void whatIsSandedOnOneAndOnBothFacesIsCounted() {
    told(step(box, "Sand the inside faces"), "Sand both faces of the others, P × 1");
  }

  /** Glue stays open for minutes: three drawers are not spread and closed in them. */
  @Test
  void whatIsGluedUpAlikeIsSpreadOneByOne() throws IOException {
    StepText drawers =
        step(StepWordsTest.steps("sideboard"), "Glue up the upper drawer and drawers 1 and 2");
    int each = told(drawers, "spread glue on one only");
    assertTrue(each < told(drawers, "Brush a thin coat of glue"), drawers::toString);
    assertTrue(drawers.sentences().get(each).contains("36 minutes each"), drawers::toString);
  }

  @Test
  void clampsOfPanelsAreCountedAndComeOff() throws IOException {
    List<StepText> table = StepWordsTest.steps("dining-table");
    StepText legs = step(table, "Glue up the layers of the legs");
    told(legs, "Set eight clamps for each of the four legs (A)");
    told(legs, "Spread glue on one at a time, for the shop has eight clamps");
    told(legs, "Take off the clamps of step 2.");
  }

  /** The top takes six of eight clamps, each front three. */
  @Test
  void panelsAreGluedUpTogetherAsTheClampsAllow() throws IOException {
    told(
        step(
            StepWordsTest.steps("sideboard"),
            "Glue up the boards for the top and the drawer fronts"),
        "glue up in turns: first the top (A), then the two drawer fronts (U and Y)");
  }
}
