package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;

/** Hardware is lined up on parts as they stand, not before they have their place. */
final class MountOnStandingParts implements Rule {
  @Override
  public String key() {
    return "mount-on-standing-parts";
  }

  @Override
  public String reason() {
    return "the part that carries the hardware stands in its place first";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.all(Verb.MOUNT).flatMap(mount -> needs(job, mount)).toList();
  }

  private Stream<Need> needs(Job job, Operation mount) {
    return job.placings().stream()
        .filter(placing -> !job.isLate(placing.unit()) || job.late().isFront(placing.unit()))
        .filter(placing -> placing.unit().partNames().stream().anyMatch(mount.parts()::contains))
        .map(placing -> need(Job.fit(placing), mount.name()));
  }
}
