package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.planset.StepText.SettingText;
import storyrod.words.Words;

/** Nothing in the steps of whole projects is told too late, twice, or of what is not there. */
class ToldInOrderTest {
  private static final int LONG = 80;

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
    assertTrue(
        says(both, "longest rough lengths first: H × 2 in one (618 mm), then Y (485 mm)"),
        both::toString);
    assertTrue(says(both, "Measure the sheets with calipers"), both::toString);
    assertTrue(says(both, "for birch plywood of 18 mm, birch plywood"), both::toString);
  }

  /** Legs of layers are bought as the aprons' boards are, the lid's wood stands on its rings. */
  @Test
  void woodsAreToldApartByHowTheyAreBoughtAndSawn() {
    StepText boards = table.getFirst();
    assertTrue(says(boards, "For rough 4/4 black cherry, 7/8 in when planed, "), boards::toString);
    assertTrue(says(boards, "For rough 5/4 black cherry, 1 in when planed, "), boards::toString);
    assertTrue(
        says(boards, "For rough 4/4 black cherry to be glued up in layers, "), boards::toString);
    StepText chosen = box.getFirst();
    assertTrue(
        says(chosen, "For rough 3/4 in black cherry, 1/2 in when planed, "), chosen::toString);
    assertTrue(
        says(chosen, "For rough 3/4 in quarter-sawn black cherry, 1/2 in when planed, "),
        chosen::toString);
  }

  @Test
  void whatHoldsForSeveralThingsIsOneSentence() {
    for (List<StepText> steps : List.of(table, nightstand, bench, box)) {
      for (StepText step : steps) {
        List<String> ends = step.sentences().stream().map(ToldInOrderTest::end).toList();
        assertEquals(Set.copyOf(ends).size(), ends.size(), step::toString);
      }
    }
  }

  /** The end of a long sentence: if two of a step share it, they say the same of two things. */
  private static String end(String sentence) {
    return sentence.length() > LONG ? sentence.substring(sentence.length() - LONG) : sentence;
  }

  @Test
  void partsAreMarkedWhenTheyHaveTheirSizeAndBeforeAnyJoint() {
    int marked = number(table, "Mark face and edge");
    assertTrue(number(table, "Cut the parts of 7/8 in") < marked);
    assertTrue(marked < number(table, "Cut the grooves"));
    int slab = number(table, "Mark face and edge of the legs and the slab");
    assertTrue(number(table, "Plane the slab") < slab);
    assertTrue(slab < number(table, "Cut the tongues"));
    StepText sides = step(nightstand, "Mark face and edge");
    assertTrue(says(sides, "A in pairs"), sides::toString);
    assertTrue(says(sides, "one as drawn and one mirrored"), sides::toString);
  }

  @Test
  void slotInATongueWaitsForTheTongue() {
    assertTrue(number(table, "Cut the tongues on the slab") < number(table, "Cut the peg slots"));
  }

  /** What is measured from an end has to find that end. */
  @Test
  void tonguesLoseTheirShavingWhenNothingMoreIsMeasuredFromTheirEnds() {
    StepText tongues = step(table, "Cut the tongues on the slab");
    assertTrue(says(tongues, "Leave the ends of the tongues of the slab (D) as they are"));
    assertFalse(says(tongues, "shaving"), tongues::toString);
    StepText slots = step(table, "Cut the peg slots in the slab");
    assertTrue(says(slots, "from the left end"), slots::toString);
    assertFalse(says(slots, "shaving"), slots::toString);
    StepText last = step(table, "Drill the peg holes in the slab");
    String sentence = last.sentences().getLast();
    assertTrue(
        sentence.contains("plane a shaving off the end of each tongue of the slab (D)"), sentence);
    assertTrue(last.tools().contains("shoulder plane"), last::toString);
  }

  /** Without pegs nothing is measured from there later. */
  @Test
  void tonguesWithoutPegsLoseTheirShavingAtOnce() throws IOException {
    List<StepText> door = StepWordsTest.steps("../src/test/resources/projects/panel-door");
    StepText tongues = step(door, "Cut the tongues");
    assertTrue(says(tongues, "Plane a shaving off the end of each tongue,"), tongues::toString);
    assertFalse(says(tongues, "Leave the ends"), tongues::toString);
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
    assertTrue(says(glued, "drawer 2, of N, Q × 2, R and S"), glued::toString);
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

  /** One clamp in the middle would bend the legs and leave the rails open. */
  @Test
  void everyRailOfAFrameGetsAClampOfItsOwn() {
    StepText rails = step(box, "Glue the long rails, the long stretcher");
    assertTrue(says(rails, "Set three clamps from left to right"), rails::toString);
    StepText stand = step(nightstand, "Glue up the stand");
    assertTrue(says(stand, "Set two clamps from left to right"), stand::toString);
    StepText ends = step(nightstand, "Glue up the left end and the right end");
    assertTrue(says(ends, "Set two clamps from front to back"), ends::toString);
    assertTrue(says(ends, "the jaws on the four legs (G)"), ends::toString);
  }

  @Test
  void shortLegIsNotFirstTaperedInAJigAndThenForbiddenIt() {
    StepText tapers = step(nightstand, "Cut the tapers");
    assertEquals(List.of("fine handsaw", "bench vice", "hand plane"), tapers.tools());
    assertFalse(says(tapers, "Set a tapering jig"), tapers::toString);
    assertEquals(List.of(Words.ENGLISH.say("caution.hand-saw")), tapers.cautions());
  }

  @Test
  void shortPartsAreNotSawnApartBeforeTheyAreMilled() {
    StepText mill = step(nightstand, "Mill the European oak to 20 mm");
    assertTrue(
        says(mill, "the rough sizes in the cut list: B × 2, D, E × 2, J × 2, P, T and X."),
        mill::toString);
    assertTrue(says(mill, "Saw H × 2 as one long blank, end to end (618 mm)"), mill::toString);
    StepText legs = step(nightstand, "Mill the European oak to 45 mm");
    assertFalse(says(legs, "Saw rough blanks"), legs::toString);
  }

  /** The ends of the box are of two heights: they cannot lie end to end in one. */
  @Test
  void shortPartsOfTwoWidthsAreBlanksOfTheirOwn() {
    assertTrue(
        box.stream().anyMatch(each -> says(each, "Saw K and L each as a longer blank of its own")));
    assertTrue(
        box.stream()
            .filter(each -> says(each, "those of one rough width end to end"))
            .noneMatch(each -> says(each, "Saw K")));
  }

  /** A panel that is flush at the top cannot also be told to lie on the bottom of its groove. */
  @Test
  void flushEdgeGovernsWhereAPanelIsSlidIn() {
    StepText back = step(nightstand, "Fasten the back panel");
    assertTrue(says(back, "flush with the back stretcher (E) at the top"), back::toString);
    assertTrue(says(back, "The flush edge governs"), back::toString);
    assertFalse(says(back, "sits at the bottom of the groove"), back::toString);
  }

  @Test
  void feltIsCutToTheInsideOfTheBox() {
    StepText felt = step(box, "Fit the wool felt");
    assertTrue(says(felt, "Cut it 16 15/16 in long and 9 11/16 in wide"), felt::toString);
    PlanSet set = AllProjects.named("sewing-box");
    Texts texts = new Texts(set.piece().description().format(), Words.ENGLISH);
    assertTrue(
        HardwareList.whole(set, texts).rows().stream()
            .anyMatch(row -> row.item().endsWith(", cut to 16 15/16 × 9 11/16 in")));
  }

  @Test
  void stavesAreSawnBeforeTheyAreFlattened() {
    assertTrue(
        says(step(nightstand, "Glue up the boards"), "Saw four staves for the top (Y) to the"));
  }

  /** No dado set cuts an eighth of an inch. */
  @Test
  void grooveNarrowerThanADadoSetIsCutWithOneBlade() {
    assertFalse(step(box, "Cut the grooves in the tray sides").tools().contains("dado set"));
    assertFalse(step(nightstand, "Cut the grooves in the stretchers").tools().contains("dado set"));
    assertTrue(step(nightstand, "Cut the grooves in the drawer").tools().contains("dado set"));
  }

  @Test
  void diagonalsAreMeasuredBeforeScrewsHoldThem() {
    List<String> told = step(nightstand, "Screw the stretchers").sentences();
    int measured = first(told, "Before you drive anything, measure both diagonals");
    assertTrue(0 <= measured && measured < first(told, "Drive the eight"), told::toString);
  }

  private static int first(List<String> told, String start) {
    return told.stream().map(each -> each.startsWith(start)).toList().indexOf(true);
  }

  /** The lowest box front has four, the others two: eight in all. */
  @Test
  void frontsWithUnequalNumbersOfScrewsAreNotToldAnAverage() {
    StepText fronts = step(nightstand, "Fix the drawer fronts");
    assertTrue(says(fronts, "drive a screw through each from behind"), fronts::toString);
    assertEquals(
        1, fronts.sentences().stream().filter(each -> each.contains("clamp")).count(), "once");
  }
}
