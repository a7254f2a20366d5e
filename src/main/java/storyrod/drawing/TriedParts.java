package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Nesting;

/** What a trial of parts looks like: as the step that fits them for good, among less. */
final class TriedParts {
  private final BuildPlan plan;
  private final Nesting nesting;

  TriedParts(BuildPlan plan, Nesting nesting) {
    this.plan = plan;
    this.nesting = nesting;
  }

  /** The step that fits for good what a step tries, at its time; empty if it tries no parts. */
  Optional<Step> in(Step trial) {
    return plan.steps().stream()
        .filter(each -> trial.verb() == Verb.TRIAL_FIT && each.number() > trial.number())
        .filter(each -> each.verb() == Verb.FIT && named(each).equals(named(trial)))
        .findFirst()
        .map(later -> trial.trying(later, there(trial, later.standing())));
  }

  private static Set<String> named(Step step) {
    return step.operations().stream().map(Operation::target).collect(Collectors.toSet());
  }

  /** Of what stands later, the outermost units into which the parts are tried. */
  private List<String> there(Step trial, List<String> standing) {
    Set<String> units =
        trial.targets().stream()
            .filter(standing::contains)
            .map(this::outermost)
            .collect(Collectors.toSet());
    return standing.stream().filter(each -> units.contains(outermost(each))).toList();
  }

  private String outermost(String part) {
    return nesting.around(part).getLast();
  }
}
