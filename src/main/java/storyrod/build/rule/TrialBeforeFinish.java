package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Mortises for leaves, edges planed to an even gap and tight tongues are cut in bare wood. */
final class TrialBeforeFinish implements Rule {
  @Override
  public String key() {
    return "trial-before-finish";
  }

  @Override
  public String reason() {
    return "hinges, slides and sliding lids are fitted on trial, and doors and drawers with them, before the finish: what is planed to fit must still be bare";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.all(Verb.TRIAL_FIT)
        .flatMap(trial -> job.all(Verb.FINISH).map(finish -> need(trial.name(), finish.name())))
        .toList();
  }
}
