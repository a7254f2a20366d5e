package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** What no brush reaches later, and what shrinks into sight, is finished before it is built in. */
final class PreFinishBeforeFitting implements Rule {
  @Override
  public String key() {
    return "pre-finish-before-fitting";
  }

  @Override
  public String reason() {
    return "no brush reaches all of it once it is in its place";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.onEachPart(this, Verb.PRE_FINISH, Verb.FIT);
  }
}
