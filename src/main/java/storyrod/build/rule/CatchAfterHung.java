package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.description.ItemKind;

/** A catch is set by the door that hangs. */
final class CatchAfterHung implements Rule {
  @Override
  public String key() {
    return "catch-after-hung";
  }

  @Override
  public String reason() {
    return "a catch is set where the door comes to rest, which shows only when it hangs";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.all(Verb.MOUNT)
        .filter(mount -> job.kind(mount) == ItemKind.CATCH)
        .flatMap(mount -> needs(job, mount))
        .toList();
  }

  private Stream<Need> needs(Job job, Operation mount) {
    return job.placings().stream()
        .filter(placing -> job.late().isLoose(placing.unit()))
        .filter(placing -> placing.unit().partNames().stream().anyMatch(mount.parts()::contains))
        .map(placing -> need(Job.fit(placing), mount.name()));
  }
}
