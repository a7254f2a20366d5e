package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** A part is sized from a flat board: an edge that leans against the fence must be true. */
final class SizeAfterMilling implements Rule {
  @Override
  public String key() {
    return "size-after-milling";
  }

  @Override
  public String reason() {
    return "a board is flat and of even thickness before it is cut to size";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.onParts(this, Verb.MILL, Verb.SIZE, part -> !job.isPanel(part));
  }
}
