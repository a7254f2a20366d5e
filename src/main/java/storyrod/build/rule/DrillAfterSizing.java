package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Holes are set out from the edges, so the edges come first. */
final class DrillAfterSizing implements Rule {
  @Override
  public String key() {
    return "drill-after-sizing";
  }

  @Override
  public String reason() {
    return "holes are set out from the finished edges";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.onEachPart(this, Verb.SIZE, Verb.DRILL);
  }
}
