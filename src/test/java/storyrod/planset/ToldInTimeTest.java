package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a maker has to know before the cut is told before it, and with the parts as they are. */
class ToldInTimeTest {
  private static List<StepText> table;
  private static List<StepText> bench;
  private static List<StepText> stool;
  private static List<StepText> box;

  @BeforeAll
  static void write() throws IOException {
    table = StepWordsTest.steps("dining-table");
    bench = StepWordsTest.steps("window-bench");
    stool = StepWordsTest.steps("step-stool");
    box = StepWordsTest.steps("sewing-box");
  }

  private static StepText step(List<StepText> steps, String title) {
    return steps.stream()
        .filter(step -> step.title().startsWith(title))
        .findFirst()
        .orElseThrow(
            () -> new AssertionError(title + steps.stream().map(StepText::title).toList()));
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

  private static void assertTool(StepText step, String tool) {
    assertTrue(step.tools().contains(tool), step::toString);
  }

  /** The lid's edges are thinned later: nothing of them can be tried yet. */
  @Test
  void lidGroovesAreTriedWithAScrapOfTheThicknessToCome() {
    StepText grooves = step(box, "Cut the lid grooves");
    told(grooves, "Plane a scrap to 3/16 in");
    assertSilent(grooves, "run the edge of the lid");
  }

  @Test
  void theTrialOfADeepGrooveIsCutInPassesToo() {
    StepText grooves = step(table, "Cut the grooves in the breadboard ends");
    int passes = told(grooves, "begin 3/8 in deep");
    assertTrue(passes < told(grooves, "Cut a trial groove"), grooves::toString);
  }

  @Test
  void aPanelTooLongForASledIsSawnWithTheTrackSaw() {
    StepText sized = step(bench, "Plane the top and the drawer front");
    assertTrue(told(sized, "Lay the top (F) on battens, with a helper") < told(sized, "Of the"));
    assertTool(sized, "track saw, or circular saw with a guide");
  }

  @Test
  void edgesThatSlideAreTapedOverBeforeTheFirstCoat() {
    StepText finish = step(box, "Finish the piece");
    int taped = told(finish, "tape over the edges of the lid (T)");
    assertTrue(taped < told(finish, "coat of shellac on every"), finish::toString);
    assertTool(finish, "masking tape");
    assertTool(finish, "fine abrasive pad");
  }

  @Test
  void headsAreSunkOnTheFaceThatTheScrewsEnter() {
    StepText holes = step(stool, "Drill the screw holes");
    told(holes, "Countersink the holes to 5/16 in across");
    told(holes, "the top face of the step (A)");
    told(holes, "the left face of the left leg panel (B)");
    assertTool(holes, "countersink bit");
    assertSilent(step(table, "Drill the peg holes"), "Countersink");
  }

  @Test
  void aHoleAcrossASlotIsBackedInIt() {
    told(step(table, "Drill the peg holes in the breadboard ends"), "push a scrap that fills it");
    assertSilent(step(stool, "Drill the screw holes"), "cross a slot");
  }

  @Test
  void noBearingRunsIntoASlot() {
    StepText chamfer = step(stool, "Chamfer the edges of the step");
    int plugged = told(chamfer, "push a scrap into its mouth");
    assertTrue(plugged < told(chamfer, "Take the edge off"), chamfer::toString);
    assertSilent(step(stool, "Round over the edges in the step"), "into its mouth");
  }

  @Test
  void aRoundedEdgeStopsShortOfTheJointItsEndStandsIn() {
    StepText rounded = step(stool, "Round over the edges in the leg panels");
    told(rounded, "stop 3/8 in short of an end that stands in a slot");
    assertSilent(step(table, "Round over the edges in the slab"), "short of an end");
    assertFalse(rounded.sentences().isEmpty());
  }

  /** Boards of eleven inches are not safe in the jointer: two panels are milled as one. */
  @Test
  void shortPanelsAreMilledAsOneLongPanel() {
    told(step(stool, "Glue up the boards for the leg panels"), "the boards of B × 2 in one long");
    StepText sized = step(stool, "Plane the leg panels");
    assertTrue(told(sized, "Crosscut the long panel of B × 2") < told(sized, "Square both ends"));
    assertSilent(step(stool, "Glue up the boards for the step"), "in one long panel");
  }

  @Test
  void layersLeaveSomethingToPlane() {
    told(step(table, "Glue up the layers of the legs"), "better 25/32 in");
  }

  @Test
  void nailsInNarrowEndsArePredrilled() {
    StepText glides = step(box, "Mount the glides");
    assertTrue(told(glides, "thinner and shorter than its nail") < told(glides, "drive it"));
    assertTool(glides, "drill");
  }

  @Test
  void boardsWithPinsAreStruckAtTheirFarEnds() {
    StepText glued = step(box, "Glue up the box");
    told(
        glued,
        "Drive the front (H) and the back (J) home with a mallet and a block across the far");
    told(glued, "Drive the right end (L) home with a mallet and a block across the tails");
  }

  @Test
  void boardsTurnedEndForEndPlaneTheSameWay() {
    told(step(table, "Glue up the boards for the slab"), "over, end for end");
  }

  @Test
  void diagonalsAcrossTheFeetAreMeasuredBeforeTheScrews() {
    StepText leg = step(stool, "Glue the right leg panel to the step");
    int measured = told(leg, "measure both diagonals across the feet");
    assertTrue(measured < told(leg, "Drill a pilot hole"), leg::toString);
  }

  @Test
  void aNotchedFaceIsKeptFromRocking() {
    told(step(box, "Cut the spline slots"), "so that the part cannot rock");
  }

  @Test
  void mitresWithSplinesAreSquaredUnderTheClamps() {
    StepText frame = step(box, "Glue up the top frame");
    assertSilent(frame, "Before you drive");
    assertTrue(told(frame, "band clamp") < told(frame, "Measure both diagonals"));
  }

  @Test
  void aLidIsTriedWhenTheBoxIsDry() {
    told(step(box, "Put the left end, the right end"), "Slide the lid (T) into its grooves too");
    told(step(box, "Put the stand together dry"), "two loose tenons");
    assertSilent(step(stool, "Put the piece together dry"), "Slide ");
  }

  @Test
  void hardwareOfOneKindIsSharedOut() {
    told(step(box, "Fit the felt dots"), "Fit twelve, as noted: four to the two tray ends (Q)");
  }

  @Test
  void oilIsWipedOff() {
    told(step(stool, "Finish the piece"), "wipe off all that is still wet");
    assertSilent(step(box, "Finish the piece"), "still wet");
  }

  @Test
  void offcutsAreOfWhatThePieceHas() {
    told(step(table, "Try the finish"), "every wood that is finished");
    told(step(box, "Try the finish"), "every wood and sheet");
  }

  @Test
  void theLidIsThinnedOnlyWhereItRunsInGrooves() {
    told(step(box, "Thin the edges of the lid"), "along its front, back and left edges");
  }

  @Test
  void aLeaningSlotIsWiderThanThePartIsThick() {
    StepText dados = step(stool, "Cut the leaning dados");
    told(dados, "49/64 in wide along the face");
    StepText.SettingText width = dados.settings().getFirst();
    assertEquals("Width of cut, along the face 49/64 in", width.name() + " " + width.value());
  }

  /** What slides lies close over something: a head that stands out would catch there. */
  @Test
  void theHeadOfAKnobOnALidIsSunkBeforeTheFinish() {
    StepText holes = step(box, "Drill the knob holes in the lid");
    told(holes, "Sink the hole from the other face");
    assertTool(holes, "countersink bit");
  }

  @Test
  void aDriverAndADepthStopLieReadyForTheTop() {
    StepText top = step(bench, "Fasten the top");
    assertTool(top, "depth stop");
    assertTool(top, "screwdriver");
  }
}
