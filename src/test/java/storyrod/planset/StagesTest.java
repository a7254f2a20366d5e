package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.Diagnostics;

/** Every step of a whole project stands under a heading that fits it. */
class StagesTest {
  private static final Map<String, Set<Verb>> FITTING =
      Map.of(
          // the trial is of the first offcut, and may stand between boards that are glued up
          "milling", Set.of(Verb.CHOOSE, Verb.MILL, Verb.TEST),
          // boards that are glued up between the cuts, where the clamps are free only then
          "panels", Set.of(Verb.MILL),
          "sizing", Set.of(Verb.BLANK, Verb.KEEP, Verb.REJOIN, Verb.SIZE, Verb.MARK),
          "trial", Set.of(Verb.TEST),
          "joints", Set.of(Verb.SIZE, Verb.MARK, Verb.CUT, Verb.DRILL, Verb.SAND),
          // a cut or two may fill a wait for the glue, see StageRuns
          "sub-assemblies", Set.of(Verb.DRY_FIT, Verb.PRE_FINISH, Verb.FIT, Verb.TRIM, Verb.CUT),
          "assembly", Set.of(Verb.DRY_FIT, Verb.PRE_FINISH, Verb.FIT, Verb.TRIM, Verb.TRIAL_FIT),
          "finishing", Set.of(Verb.FINISH),
          "hardware", Set.of(Verb.MOUNT, Verb.FIT));

  @ParameterizedTest
  @ValueSource(
      strings = {"sideboard", "bookcase", "dining-table", "nightstand", "step-stool", "sewing-box"})
  void eachStepFitsItsHeading(String project) throws IOException {
    List<Step> steps =
        Planner.plan(StepWordsTest.piece(project), new Diagnostics()).orElseThrow().steps();
    assertEquals(
        List.of(),
        steps.stream()
            .filter(step -> step.stage().title().isEmpty())
            .filter(step -> !FITTING.get(step.stage().key()).contains(step.verb()))
            .map(step -> step.number() + " " + step.stage().key() + " " + step.verb())
            .toList());
  }

  /** The table's wood is all of one kind: an offcut is there before any part has its size. */
  @ParameterizedTest
  @ValueSource(strings = {"dining-table"})
  void theTrialDriesWhileThePartsAreMade(String project) throws IOException {
    List<Step> steps =
        Planner.plan(StepWordsTest.piece(project), new Diagnostics()).orElseThrow().steps();
    List<Verb> before =
        steps.stream().map(Step::verb).takeWhile(verb -> verb != Verb.TEST).toList();
    assertEquals(Set.of(Verb.CHOOSE, Verb.MILL), Set.copyOf(before));
  }
}
