package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Steps of the projects ask for nothing that cannot be done yet, or can no longer be done. */
class StepsInTimeTest {
  private static StepText titled(List<StepText> steps, String start) {
    return steps.stream().filter(each -> each.title().startsWith(start)).findFirst().orElseThrow();
  }

  private static int place(StepText step, String start) {
    return step.sentences()
        .indexOf(
            step.sentences().stream()
                .filter(said -> said.startsWith(start))
                .findFirst()
                .orElseThrow());
  }

  @Test
  void breadboardEndsAreTriedDryAndTheirPegsSet() throws IOException {
    List<StepText> table = StepWordsTest.steps("dining-table");
    StepText dry = titled(table, "Put the left end, the right end and the top together dry");
    StepText pegged = titled(table, "Fasten the breadboard ends");
    StepText rounded = titled(table, "Round over the edges in the slab");
    assertTrue(table.indexOf(dry) < table.indexOf(pegged));
    assertTrue(table.indexOf(pegged) < table.indexOf(rounded));
    assertEquals("1 h", pegged.waiting());
    assertTrue(
        place(pegged, "Draw the two breadboard ends") < place(pegged, "Let the glue on a peg"));
    assertTrue(pegged.tools().contains("glue and brush"), pegged::toString);
  }

  /** The top goes on after the finish; until then nothing is above the uppermost front. */
  @Test
  void gapBelowTheTopIsCheckedWhenTheTopIsOn() throws IOException {
    List<StepText> steps = StepWordsTest.steps("nightstand");
    StepText trial = titled(steps, "Fit the drawer slides and hang");
    StepText fronts = titled(steps, "Fix the drawer fronts");
    assertEquals(List.of(), gapAbove(trial, "X"));
    assertEquals(1, gapAbove(fronts, "X").size());
    assertTrue(steps.indexOf(titled(steps, "Fasten the top")) < steps.indexOf(fronts));
  }

  private static List<StepText.SettingText> gapAbove(StepText step, String mark) {
    return step.settings().stream()
        .filter(each -> each.name().equals("Gap above") && each.mark().equals(mark))
        .toList();
  }

  @Test
  void doorPanelsAndTheEdgesRoundThemAreSandedBeforeTheDoorsAreGlued() throws IOException {
    StepText sanding = titled(StepWordsTest.steps("sideboard"), "Sand the inside faces");
    assertTrue(sanding.sentences().get(place(sanding, "Sand both faces")).contains("AC × 2"));
    assertTrue(
        sanding
            .sentences()
            .contains("Sand the edges of Z × 2, AA × 2 and AB × 4 that will look at a panel."));
  }

  @Test
  void strapIsOnThePieceBeforeThatStandsAgainstTheWall() throws IOException {
    StepText tied = titled(StepWordsTest.steps("sideboard"), "Tie the piece to the wall");
    assertTrue(place(tied, "Screw the strap") < place(tied, "Set the piece in its place"));
    assertTrue(place(tied, "Set the piece in its place") < place(tied, "Screw its other end"));
  }

  /**
   * What holds it is a stud, at a height, by the screws that its maker and the local codes ask for.
   */
  @Test
  void strapIsHeldByAStudAsItsMakerSays() throws IOException {
    Map<String, String> ends =
        Map.of("sideboard", "Screw its other end", "bookcase", "Screw their other ends");
    for (String project : ends.keySet()) {
      StepText tied = titled(StepWordsTest.steps(project), "Tie the piece to the wall");
      assertTrue(tied.sentences().getFirst().contains("the local codes"), project);
      assertTrue(place(tied, "Set the piece in its place") < place(tied, "Pull the piece forward"));
      String wall = tied.sentences().get(place(tied, ends.get(project)));
      assertTrue(wall.contains("middle of the stud, no higher than on the piece"), wall);
      assertTrue(wall.contains("the strap's maker names for a stud"), wall);
      assertTrue(place(tied, ends.get(project)) < place(tied, "Push the piece back"));
      assertTrue(tied.sentences().getLast().contains("shorten"), "no one reaches behind it");
    }
  }
}
