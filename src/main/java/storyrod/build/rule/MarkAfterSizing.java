package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/**
 * A mark on an edge that is still sawn off is lost, and an edge is a reference only when it is
 * true.
 */
final class MarkAfterSizing implements Rule {
  @Override
  public String key() {
    return "mark-after-sizing";
  }

  @Override
  public String reason() {
    return "a part is marked on its finished faces and edges";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.onEachPart(this, Verb.SIZE, Verb.MARK);
  }
}
