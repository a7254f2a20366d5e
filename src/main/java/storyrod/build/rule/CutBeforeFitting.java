package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;

/** A part joins what stands only when its own cuts and those it goes into are made. */
final class CutBeforeFitting implements Rule {
  @Override
  public String key() {
    return "cut-before-fitting";
  }

  @Override
  public String reason() {
    return "both halves of a joint are cut before it is closed";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.all(Verb.FIT).flatMap(fit -> needs(job, fit)).distinct().toList();
  }

  private Stream<Need> needs(Job job, Operation fit) {
    Stream<String> joined =
        fit.joints().stream().flatMap(joint -> Stream.of(joint.first(), joint.second()));
    return Stream.concat(fit.parts().stream(), joined)
        .distinct()
        .filter(part -> job.has(Verb.CUT, part))
        .map(part -> need(Job.name(Verb.CUT, part), fit.name()));
  }
}
