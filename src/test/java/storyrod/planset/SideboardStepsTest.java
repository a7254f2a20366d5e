package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.words.Words;

/**
 * What the steps of a sideboard say of clamps, weak joints and turning, in a shop with eight
 * clamps.
 */
class SideboardStepsTest {
  private static List<StepText> steps;

  @BeforeAll
  static void write() throws IOException {
    steps = StepWordsTest.steps("sideboard");
  }

  private static StepText titled(String title) {
    return steps.stream().filter(each -> each.title().equals(title)).findFirst().orElseThrow();
  }

  private static int number(String title) {
    return 1 + steps.indexOf(titled(title));
  }

  /** The partitions go against the stiles in the description, the frame against the partitions. */
  @Test
  void faceFrameIsPressedDownAsOne() {
    StepText frame = titled("Glue the face frame in place");
    assertTrue(
        frame.sentences().stream()
            .anyMatch(s -> s.startsWith("Put battens under the jaws, and tighten from the middle")),
        frame::toString);
    assertTrue(
        frame.sentences().stream()
            .anyMatch(s -> s.startsWith("No clamp reaches the two middle stiles (K) there: lay a")),
        frame::toString);
    assertTrue(
        frame.sentences().stream().noneMatch(s -> s.contains("the jaws on") && s.contains("stile")),
        frame::toString);
  }

  /** Sixteen clamps would press all of the frame; the shop has eight and battens. */
  @Test
  void noMoreClampsAreSetThanTheShopHas() {
    StepText frame = titled("Glue the face frame in place");
    assertTrue(
        frame.sentences().stream().noneMatch(s -> s.matches("Set .* clamps from .*")),
        frame::toString);
    assertTrue(
        frame
            .sentences()
            .contains(
                "Clamp from front to back across the joints, the jaws on the two sides (B) and the"
                    + " face frame, and on the bottom (C) and the face frame: the clamps open 19 in,"
                    + " and more with pads."),
        frame::toString);
    assertTrue(
        frame.sentences().stream()
            .anyMatch(s -> s.contains("one clamp for both where two battens meet")),
        frame::toString);
  }

  @Test
  void clampsThatOpenAlikeAreToldOnce() {
    StepText door = titled("Glue up the left door and the right door");
    int drawers = number("Glue up the upper drawer and drawers 1 and 2");
    assertTrue(
        door.sentences().contains("Take off the clamps of step %d.".formatted(drawers)),
        door::toString);
    assertEquals(
        1,
        steps.stream()
            .flatMap(each -> each.sentences().stream())
            .filter(said -> said.matches("Take off the clamps of .*\\b" + drawers + "\\b.*"))
            .count());
  }

  /** It is laid down for the cleats and stood up after the face frame. */
  @Test
  void helpToTurnItIsAskedForOnlyWhereItIsTurned() {
    String turning = Words.ENGLISH.say("caution.turning");
    assertTrue(titled("Screw the cleats to the bottom").cautions().contains(turning));
    assertFalse(titled("Glue the feet to the cleats").cautions().contains(turning));
    assertTrue(titled("Glue the face frame in place").cautions().contains(turning));
  }

  /** It stands up when the clamps that hold the frame are off, not while they hang on its back. */
  @Test
  void pieceIsStoodUpWhenTheClampsAreOff() {
    int frame = number("Glue the face frame in place");
    assertFalse(steps.get(frame - 1).sentences().contains("Stand it up again."));
    String off = "Take off the clamps of step %d and stand the piece up again.".formatted(frame);
    assertEquals(1, steps.stream().filter(each -> each.sentences().getFirst().equals(off)).count());
  }
}
