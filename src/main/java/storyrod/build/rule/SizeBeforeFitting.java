package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;

/** Nothing is put together from parts that are not yet cut. */
final class SizeBeforeFitting implements Rule {
  @Override
  public String key() {
    return "size-before-fitting";
  }

  @Override
  public String reason() {
    return "a part is cut to size before it is put in its place";
  }

  @Override
  public List<Need> needs(Job job) {
    return Stream.concat(
            job.onEachPart(this, Verb.SIZE, Verb.FIT).stream(),
            job.all(Verb.FIT).flatMap(fit -> made(job, fit)))
        .toList();
  }

  /** What is made for joints is cut before the first of them is closed. */
  private Stream<Need> made(Job job, Operation fit) {
    return fit.hardware().stream()
        .flatMap(each -> job.piece().made(each.item()).stream())
        .flatMap(each -> each.names().stream())
        .map(name -> need(Job.name(Verb.SIZE, name), fit.name()));
  }
}
