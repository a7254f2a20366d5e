package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a maker has to know of places, clamps and turns when parts go together. */
class FittingWordsTest {
  private static List<StepText> bookcase;
  private static List<StepText> nightstand;
  private static List<StepText> sideboard;
  private static List<StepText> bench;

  @BeforeAll
  static void write() throws IOException {
    bookcase = StepWordsTest.steps("bookcase");
    nightstand = StepWordsTest.steps("nightstand");
    sideboard = StepWordsTest.steps("sideboard");
    bench = StepWordsTest.steps("window-bench");
  }

  private static StepText step(List<StepText> steps, String start) {
    return steps.stream()
        .filter(each -> each.title().startsWith(start))
        .findFirst()
        .orElseThrow(() -> new AssertionError(start));
  }

  private static int says(StepText step, String start) {
    for (int i = 0; i < step.sentences().size(); i++) {
      if (step.sentences().get(i).startsWith(start)) {
        return i;
      }
    }
    throw new AssertionError(start + " in " + step);
  }

  @Test
  void whereSeveralGoInTogetherEachIsToldWhereItLiesFlush() {
    StepText strips = step(bookcase, "Glue the right side strip and the bottom strip");
    says(strips, "Keep the right side strip (C) flush with the right side (J): ");
    // The ends of the bottom lie in the sides, where nobody sees whether the strip meets them.
    says(strips, "Keep the bottom strip (D) flush with the bottom (K): bottom and top edges.");
  }

  @Test
  void placeIsMeasuredFromAFaceThatCanBeTouched() {
    // The bottom ends in rabbets of the sides, so its own ends are out of sight.
    StepText plinth = step(bookcase, "Screw the plinth to the bottom");
    assertTrue(
        plinth.sentences().stream().noneMatch(said -> said.contains("from the left end")),
        plinth::toString);
    int set =
        says(
            plinth,
            "Measure 1 in inwards from the left face of the left side (J), draw a line there");
    assertTrue(
        plinth
            .sentences()
            .get(set)
            .endsWith(
                "set the plinth front (F) and the plinth back (G) with their left ends on it."),
        plinth::toString);
  }

  /** The bottom ends at the sides' inner faces: 15 37/64 in from outside, less 23/32 in of side. */
  @Test
  void placeIsMeasuredFromTheFaceThatLooksTowardsIt() {
    StepText feet = step(bench, "Glue the middle feet to the bottom");
    says(feet, "Measure 14 7/8 in inwards from the inner face of each of the two sides (A)");
    assertTrue(
        feet.settings().stream().anyMatch(each -> each.name().startsWith("From each inner face")),
        feet::toString);
  }

  @Test
  void chamferIsMarkedOnTheFacesThatMeetAtItsEdge() {
    says(
        step(bookcase, "Chamfer the edges of the shelf strips"),
        "On the three shelf strips (Q), mark 1/8 in from the edge on both faces that meet there:"
            + " front to bottom and front to top.");
  }

  @Test
  void whatIsGluedAlreadyStaysWholeAfterADryFit() {
    StepText dry = step(nightstand, "Put the stand together dry");
    assertTrue(
        dry.sentences()
            .getLast()
            .endsWith("take it apart again; the left end and the right end stay whole."),
        dry::toString);
    assertTrue(
        step(sideboard, "Put the piece together dry")
            .sentences()
            .getLast()
            .endsWith("take it apart again; the face frame stays whole."));
  }

  @Test
  void strapNamesThePartThatHoldsIt() {
    says(step(sideboard, "Tie the piece"), "Screw the strap to the back stretcher (D), ");
    says(step(bookcase, "Tie the piece"), "Screw a strap to each of the two sides (J), ");
  }

  /** Three drawers take four clamps each, and the shop has eight. */
  @Test
  void whatTheShopHasTooFewClampsForIsGluedInTurns() {
    StepText drawers = step(sideboard, "Glue up the upper drawer and drawers 1 and 2");
    int turns = says(drawers, "Glue up two at a time, for the shop has eight clamps");
    assertTrue(turns < says(drawers, "Brush a thin coat of glue"));
    says(drawers, "In all, set ten clamps");
    says(drawers, "Leave the clamps on for one hour each time");
    assertEquals("2 h", drawers.waiting());
    StepText doors = step(sideboard, "Glue up the left door and the right door");
    assertTrue(doors.sentences().stream().noneMatch(said -> said.contains("at a time")));
    assertEquals("1 h", doors.waiting());
  }

  @Test
  void clampsAreSetBeforeTheGlueIsSpreadAndOnlyWhereTheyHoldTheWork() {
    String set = "Set the clamps to size before you spread any glue.";
    StepText doors = step(sideboard, "Glue up the left door and the right door");
    assertTrue(says(doors, set) < says(doors, "Brush a thin coat of glue"));
    StepText screwed = step(sideboard, "Glue the feet to the cleats");
    assertTrue(
        screwed.sentences().stream().noneMatch(said -> said.contains("clamp")), screwed::toString);
    assertTrue(
        screwed.cautions().stream().noneMatch(said -> said.contains("clamps set")),
        screwed::toString);
  }

  @Test
  void tolerancesAreToldInTheUnitOfTheProject() {
    for (StepText each : nightstand) {
      assertTrue(
          each.sentences().stream().noneMatch(said -> said.matches(".*\\d/\\d+ in\\b.*")),
          each::toString);
    }
  }
}
