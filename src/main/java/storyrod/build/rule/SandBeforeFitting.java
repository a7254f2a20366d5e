package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Inside faces are sanded while a sander reaches them whole. */
final class SandBeforeFitting implements Rule {
  @Override
  public String key() {
    return "sand-before-fitting";
  }

  @Override
  public String reason() {
    return "its inside face cannot be sanded into the corners once it is in its place";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.onEachPart(this, Verb.SAND, Verb.FIT);
  }
}
