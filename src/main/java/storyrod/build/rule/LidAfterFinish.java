package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** A lid that can be drawn out is finished out of its grooves, and pushed in dry. */
final class LidAfterFinish implements Rule {
  @Override
  public String key() {
    return "lid-after-finish";
  }

  @Override
  public String reason() {
    return "a sliding lid is finished out of its grooves, where all its faces are in reach and nothing sticks it to them";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> job.late().isSliding(placing.unit()) && job.canComeLast(placing))
        .flatMap(
            placing -> job.all(Verb.FINISH).map(finish -> need(finish.name(), Job.fit(placing))))
        .toList();
  }
}
