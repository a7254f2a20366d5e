package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** A top on fasteners goes on last, so that both its faces take the same finish. */
final class TopAfterFinish implements Rule {
  @Override
  public String key() {
    return "top-after-finish";
  }

  @Override
  public String reason() {
    return "the underside of the top and the inside of the case are finished while in reach";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> job.late().isTop(placing.unit()))
        .flatMap(
            placing -> job.all(Verb.FINISH).map(finish -> need(finish.name(), Job.fit(placing))))
        .toList();
  }
}
