package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Placing;
import storyrod.build.Verb;

/** A drawer's front is fixed when its box hangs, so that the gaps round it come out even. */
final class FrontAfterHung implements Rule {
  @Override
  public String key() {
    return "front-after-hung";
  }

  @Override
  public String reason() {
    return "a drawer's front is lined up by its gaps, which show only when the box hangs";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> job.late().isFront(placing.unit()))
        .flatMap(
            placing ->
                job.all(Verb.FIT)
                    .filter(fit -> fit.target().equals(drawer(job, placing)))
                    .map(fit -> need(fit.name(), Job.fit(placing))))
        .toList();
  }

  private static String drawer(Job job, Placing placing) {
    return job.late().drawers().get(placing.unit().name());
  }
}
