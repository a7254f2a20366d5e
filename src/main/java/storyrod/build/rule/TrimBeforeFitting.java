package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.AcrossJoints;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;

/** A sub-assembly is easier to turn over under a router than the piece is. */
final class TrimBeforeFitting implements Rule {
  @Override
  public String key() {
    return "trim-before-fitting";
  }

  @Override
  public String reason() {
    return "the edges of a sub-assembly are shaped while it lies on the bench by itself";
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
    return job.has(Verb.FIT, level)
        ? Stream.of(need(trim.name(), Job.name(Verb.FIT, level)))
        : Stream.empty();
  }
}
