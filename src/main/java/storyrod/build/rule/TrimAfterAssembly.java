package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.AcrossJoints;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;

/** An edge that runs on across a joint is shaped in one go, when the joint is closed. */
final class TrimAfterAssembly implements Rule {
  @Override
  public String key() {
    return "trim-after-assembly";
  }

  @Override
  public String reason() {
    return "an edge that runs on across a joint is shaped when the joint is closed, so that no step shows";
  }

  @Override
  public List<Need> needs(Job job) {
    AcrossJoints across = new AcrossJoints(job.piece());
    return job.all(Verb.TRIM)
        .flatMap(trim -> needs(job, trim, across.level(trim.target()).orElseThrow()))
        .distinct()
        .toList();
  }

  private Stream<Need> needs(Job job, Operation trim, String level) {
    return job.placings().stream()
        .filter(placing -> placing.unit().level().equals(level) && !job.isLate(placing.unit()))
        .map(placing -> need(Job.fit(placing), trim.name()));
  }
}
