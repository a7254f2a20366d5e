package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.planset.StepText.SettingText;
import storyrod.words.Words;

/** Nothing in the steps of whole projects is told too late, twice, or of what is not there. */
class ToldInOrderTest {
  private static List<StepText> table;
  private static List<StepText> nightstand;
  private static List<StepText> bench;
  private static List<StepText> box;

  @BeforeAll
  static void write() throws IOException {
    table = StepWordsTest.steps("dining-table");
    nightstand = StepWordsTest.steps("nightstand");
    bench = StepWordsTest.steps("window-bench");
    box = StepWordsTest.steps("sewing-box");
  }

  private static int number(List<StepText> steps, String start) {
    List<String> titles = steps.stream().map(StepText::title).toList();
    for (int i = 0; i < titles.size(); i++) {
      if (titles.get(i).startsWith(start)) {
        return i;
      }
    }
    throw new AssertionError("no step " + start + " in " + titles);
  }

  private static StepText step(List<StepText> steps, String start) {
    return steps.get(number(steps, start));
  }

  private static boolean says(StepText step, String words) {
    return step.sentences().stream().anyMatch(each -> each.contains(words));
  }

  private static boolean isSet(StepText step, String start) {
    return step.settings().stream().map(SettingText::name).anyMatch(n -> n.startsWith(start));
  }

  @Test
  void woodIsChosenBeforeAllElseAndTheSheetsMeasured() {
    assertEquals("Choose the boards", table.getFirst().title());
    StepText both = nightstand.getFirst();
    assertEquals("Choose the boards and the sheets", both.title());
    assertTrue(says(both, "Y (460 mm), then B (408 mm)"), both::toString);
    assertTrue(says(both, "Measure the birch plywood of 18 mm"), both::toString);
  }

  @Test
  void partsAreMarkedWhenTheyHaveTheirSizeAndBeforeAnyJoint() {
    int marked = number(table, "Mark face and edge");
    assertTrue(number(table, "Cut the parts of 7/8 in") < marked);
    assertTrue(marked < number(table, "Cut the grooves"));
    assertTrue(
        number(table, "Plane the slab")
            < number(table, "Mark face and edge of the legs and the slab"));
    assertTrue(
        number(table, "Mark face and edge of the legs and the slab")
            < number(table, "Cut the tongues"));
    StepText sides = step(nightstand, "Mark face and edge");
    assertTrue(says(sides, "A in pairs"), sides::toString);
    assertTrue(says(sides, "one as drawn and one mirrored"), sides::toString);
  }

  @Test
  void slotInATongueWaitsForTheTongue() {
    assertTrue(number(table, "Cut the tongues on the slab") < number(table, "Cut the peg slots"));
  }

  @Test
  void whatHasNoBackIsTurnedUpsideDown() {
    assertTrue(says(step(table, "Mount the glides"), "upside down"));
    assertTrue(says(step(nightstand, "Mount the glides"), "on its back"));
  }

  @Test
  void whatWasTriedDryIsNotTriedAgainWithTheGlue() {
    for (List<StepText> steps : List.of(table, nightstand)) {
      assertFalse(says(step(steps, "Glue up the left end and the right end"), "dry"));
    }
  }

  @Test
  void panelIsLeftThickForLevelling() {
    StepText panel = step(table, "Glue up the boards for the slab");
    assertTrue(says(panel, "a little over 1 in"), panel::toString);
    StepText level = step(table, "Plane the slab");
    assertTrue(says(level, "down to 1 in"), level::toString);
    assertTrue(isSet(level, "Both diagonals"), level::toString);
  }

  @Test
  void drawersThatDifferInHeightOnlyShareTheirSteps() {
    StepText glued = step(nightstand, "Glue up drawers 1 to 3");
    assertTrue(says(glued, "the three left drawer sides (K, Q and U)"), glued::toString);
    assertTrue(says(glued, "alike but for the height"), glued::toString);
    step(nightstand, "Hang drawers 1 to 3");
    StepText fronts = step(nightstand, "Fix the drawer fronts of drawers 1 to 3");
    assertTrue(isSet(fronts, "Gap"), fronts::toString);
  }

  @Test
  void oilyRagsAreWarnedOfWhenTheFinishIsTried() {
    assertTrue(
        step(table, "Try the finish").cautions().contains(Words.ENGLISH.say("caution.oily-rags")));
  }

  @Test
  void whatIsDoneWhenTheGlueIsHardIsToldLast() {
    List<StepText> planed = bench.stream().filter(s -> says(s, "Plane the frame flush")).toList();
    assertFalse(planed.isEmpty());
    planed.forEach(
        each -> assertTrue(each.sentences().getLast().contains("Plane the frame flush")));
  }

  @Test
  void gridHasNoCornersToMeasureFrom() {
    List<StepText> grids =
        box.stream().filter(each -> says(each, "short dividers") && isSet(each, "Both")).toList();
    assertEquals(List.of(), grids);
  }

  @Test
  void fastenersAboveAClosedBottomAreReachedFromInside() {
    assertTrue(says(step(nightstand, "Fasten the top"), "Reach in from inside"));
    assertTrue(says(step(table, "Fasten the top"), "Reach in from below"));
  }
}
