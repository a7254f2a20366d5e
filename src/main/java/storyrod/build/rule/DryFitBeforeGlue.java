package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.DryFits;
import storyrod.build.Verb;

/** Glue gives no time to find out what does not close. */
final class DryFitBeforeGlue implements Rule {
  @Override
  public String key() {
    return "dry-fit-before-glue";
  }

  @Override
  public String reason() {
    return "everything is put together dry before the first of its glue is spread";
  }

  @Override
  public List<Need> needs(Job job) {
    return new DryFits(job.placings(), job.late())
        .byTarget().entrySet().stream()
            .flatMap(
                entry ->
                    entry.getValue().stream()
                        .map(
                            unit ->
                                need(
                                    Job.name(Verb.DRY_FIT, entry.getKey()),
                                    Job.name(Verb.FIT, unit.name()))))
            .toList();
  }
}
