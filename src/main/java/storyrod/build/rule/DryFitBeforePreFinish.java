package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.DryFits;
import storyrod.build.Verb;

/** What the dry fit shows to be tight is pared while it is bare. */
final class DryFitBeforePreFinish implements Rule {
  @Override
  public String key() {
    return "dry-fit-before-pre-finish";
  }

  @Override
  public String reason() {
    return "what the dry fit shows to be too tight is pared while it is still bare";
  }

  @Override
  public List<Need> needs(Job job) {
    return new DryFits(job.placings(), job.late())
        .byTarget().entrySet().stream()
            .flatMap(
                entry ->
                    entry.getValue().stream()
                        .filter(unit -> job.has(Verb.PRE_FINISH, unit.name()))
                        .map(
                            unit ->
                                need(
                                    Job.name(Verb.DRY_FIT, entry.getKey()),
                                    Job.name(Verb.PRE_FINISH, unit.name()))))
            .toList();
  }
}
