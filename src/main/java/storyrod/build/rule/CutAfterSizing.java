package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Joints are set out from the edges, so the edges come first. */
final class CutAfterSizing implements Rule {
  @Override
  public String key() {
    return "cut-after-sizing";
  }

  @Override
  public String reason() {
    return "joints are set out from the finished edges";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.onEachPart(this, Verb.SIZE, Verb.CUT);
  }
}
