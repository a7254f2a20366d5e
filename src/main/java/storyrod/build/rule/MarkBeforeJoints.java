package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Joints, holes and sanding follow the marked face and edge, so that pairs come out as pairs. */
final class MarkBeforeJoints implements Rule {
  @Override
  public String key() {
    return "mark-before-joints";
  }

  @Override
  public String reason() {
    return "joints, holes and the sanding of inside faces follow the marked face and edge";
  }

  @Override
  public List<Need> needs(Job job) {
    return Stream.of(Verb.CUT, Verb.DRILL, Verb.SAND)
        .flatMap(verb -> job.onEachPart(this, Verb.MARK, verb).stream())
        .toList();
  }
}
