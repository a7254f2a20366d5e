package storyrod.build.rule;

import java.util.List;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Verb;

/** Hardware goes on when the finish is dry. */
final class MountAfterFinish implements Rule {
  @Override
  public String key() {
    return "mount-after-finish";
  }

  @Override
  public String reason() {
    return "hardware is kept clear of the finish";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.all(Verb.FINISH)
        .flatMap(finish -> job.all(Verb.MOUNT).map(mount -> need(finish.name(), mount.name())))
        .toList();
  }
}
