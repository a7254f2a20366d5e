package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
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
    return job.onEachPart(this, Verb.SIZE, Verb.FIT);
  }
}
