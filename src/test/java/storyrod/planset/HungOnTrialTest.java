package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** What hangs on trial stands among the parts, and its hardware in both steps. */
class HungOnTrialTest {
  private static final PlanSet SET = AllProjects.named("nightstand");

  private static int number(Verb verb, String target) {
    return SET.build().steps().stream()
        .filter(step -> step.verb() == verb)
        .filter(step -> step.operations().stream().anyMatch(each -> each.target().equals(target)))
        .mapToInt(Step::number)
        .findFirst()
        .orElseThrow();
  }

  /** Their edges are planed there. */
  @Test
  void frontsAreAmongThePartsOfTheTrial() {
    Step trial = SET.build().steps().get(number(Verb.TRIAL_FIT, "slide") - 1);
    assertTrue(
        trial.targets().containsAll(List.of("left-side", "drawer-1.face", "drawer-3.face")),
        trial.targets()::toString);
    assertEquals(List.of(), trial.hardware(), "it counts where it is fitted for good");
  }

  @Test
  void theScheduleNamesTheTrialAndTheStepInWhichAnItemStays() {
    Print print = Print.of(SET.piece(), SET.build(), Printing.usual(Words.ENGLISH));
    HardwareList.Row slides =
        HardwareList.of(SET, print).rows().stream()
            .filter(row -> row.item().contains("drawer slide"))
            .findFirst()
            .orElseThrow();
    assertEquals(
        number(Verb.MOUNT, "slide") + " (on trial in " + number(Verb.TRIAL_FIT, "slide") + ")",
        slides.steps());
    assertEquals(3, slides.count());
  }
}
