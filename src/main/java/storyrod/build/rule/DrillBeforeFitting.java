package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Shelf-pin and pocket holes are drilled while a part lies flat on the bench. */
final class DrillBeforeFitting implements Rule {
  @Override
  public String key() {
    return "drill-before-fitting";
  }

  @Override
  public String reason() {
    return "its holes are hard to reach, and to line up, once it is in its place";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.onEachPart(this, Verb.DRILL, Verb.FIT);
  }
}
