package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** All parts, tops and shelves too, are machined before the finish goes on. */
final class MachineBeforeFinish implements Rule {
  @Override
  public String key() {
    return "machine-before-finish";
  }

  @Override
  public String reason() {
    return "cutting and drilling would tear the finish and leave bare wood";
  }

  @Override
  public List<Need> needs(Job job) {
    Stream<Need> early =
        Stream.of(Verb.SIZE, Verb.CUT, Verb.DRILL, Verb.SAND)
            .flatMap(verb -> job.onEachPart(this, verb, Verb.PRE_FINISH).stream());
    return Stream.concat(early, ofThePiece(job)).distinct().toList();
  }

  private Stream<Need> ofThePiece(Job job) {
    return Stream.of(Verb.SIZE, Verb.CUT, Verb.DRILL, Verb.SAND, Verb.TRIM)
        .flatMap(job::all)
        .flatMap(
            earlier -> job.all(Verb.FINISH).map(finish -> need(earlier.name(), finish.name())));
  }
}
