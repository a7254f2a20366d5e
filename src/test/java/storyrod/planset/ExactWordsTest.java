package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the steps of a whole project say leaves nothing to guess and nothing to misread. */
class ExactWordsTest {
  private static List<StepText> sideboard;

  @BeforeAll
  static void write() throws IOException {
    sideboard = StepWordsTest.steps("sideboard");
  }

  private static StepText step(String start) {
    return sideboard.stream()
        .filter(step -> step.title().startsWith(start))
        .findFirst()
        .orElseThrow(
            () -> new AssertionError(sideboard.stream().map(StepText::title).toList().toString()));
  }

  private static void assertSays(StepText step, String words) {
    assertTrue(step.sentences().stream().anyMatch(each -> each.contains(words)), step::toString);
  }

  private static boolean says(String words) {
    return sideboard.stream()
        .flatMap(step -> step.sentences().stream())
        .anyMatch(each -> each.contains(words));
  }

  /** The stretcher, 3/4 in high, ends flush with the back: its middle is 3/8 in below both. */
  @Test
  void screwsAndBradsMeetTheMiddleOfWhatTheBackHides() {
    String told =
        " meet the middle of the back stretcher (D), hidden behind it and only 3/4 in high.";
    String from = "Measure 3/8 in from the top edge of the back (E): there ";
    assertSays(step("Tie the piece to the wall"), from + "the strap's screws" + told);
    assertSays(step("Fasten the back"), from + "the brads" + told);
  }

  /** The frieze rail is 6 7/8 in wide in the rough, a usual jointer 6 in (common practice). */
  @Test
  void boardsAreNoWiderThanTheNarrowerOfTheTwoMachines() {
    assertFalse(says("no wider than your planer takes"));
    assertSays(step("Glue up the boards"), "no wider than your jointer and your planer take");
    StepText milled = step("Mill the white oak to 3/4 in");
    assertSays(milled, "H is in the rough wider than a usual jointer of 6 in: flatten it");
    assertEquals(
        1,
        sideboard.stream()
            .filter(each -> each.sentences().stream().anyMatch(s -> s.contains("usual jointer")))
            .count());
  }

  /** The left stile of each door, not both stiles of the left one. */
  @Test
  void equalPartsOfSeveralDoorsAreNoPartsOfOneDoor() {
    assertFalse(says("two left door stiles"));
    assertSays(
        step("Cut the grooves in the door stiles"),
        "of the two door stiles (Z) the right edge as drawn");
  }

  @Test
  void gapsThatDifferAreEvenedTwoAndTwo() {
    assertSays(
        step("Fix the drawer fronts"),
        "even out the gaps, left against right and above against below.");
  }

  /** Two rails are as long as each other. */
  @Test
  void allOfTheLongestAreNamed() {
    assertSays(step("Choose the boards"), "then D (57 9/16 in), then H and J (55 in); the shorter");
  }

  @Test
  void sandingIsToldInShortSentences() {
    StepText finish = step("Finish the piece");
    assertSays(
        finish, "Then sand all faces of what is still loose and was not sanded before: A, Q, ");
    assertTrue(
        finish.sentences().stream()
            .filter(each -> each.contains("and"))
            .allMatch(each -> each.split(" ").length < 40),
        finish::toString);
  }
}
