package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Joints and holes are set out from the marked face and edge, so that pairs come out as pairs. */
final class MarkBeforeJoints implements Rule {
  @Override
  public String key() {
    return "mark-before-joints";
  }

  @Override
  public String reason() {
    return "joints and holes are set out from the marked face and edge";
  }

  @Override
  public List<Need> needs(Job job) {
    return Stream.of(Verb.CUT, Verb.DRILL)
        .flatMap(verb -> job.onEachPart(this, Verb.MARK, verb).stream())
        .toList();
  }
}
