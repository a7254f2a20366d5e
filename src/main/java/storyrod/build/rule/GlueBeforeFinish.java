package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Everything that is glued or fastened for good stands before the finish goes on. */
final class GlueBeforeFinish implements Rule {
  @Override
  public String key() {
    return "glue-before-finish";
  }

  @Override
  public String reason() {
    return "glue does not hold on a finished face";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> !job.isLate(placing.unit()))
        .flatMap(
            placing -> job.all(Verb.FINISH).map(finish -> need(Job.fit(placing), finish.name())))
        .toList();
  }
}
