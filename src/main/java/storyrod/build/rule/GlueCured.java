package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** A panel of boards rests until its glue has cured; only then is it sized. */
final class GlueCured implements Rule {
  @Override
  public String key() {
    return "glue-cured";
  }

  @Override
  public String reason() {
    return "glue needs to cure before the wood is worked; a joint line that is planed too early sinks later";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.onParts(this, Verb.MILL, Verb.SIZE, job::isPanel);
  }
}
