package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Unit;
import storyrod.build.Verb;

/** A drawer needs its slides and a shelf its pins; the pull of a front can wait. */
final class HangerBeforeHung implements Rule {
  @Override
  public String key() {
    return "hanger-before-hung";
  }

  @Override
  public String reason() {
    return "what it lies or hangs on is mounted first";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> job.late().isLoose(placing.unit()))
        .flatMap(placing -> needs(job, placing.unit()))
        .toList();
  }

  private Stream<Need> needs(Job job, Unit unit) {
    return job.all(Verb.MOUNT)
        .filter(mount -> unit.partNames().stream().anyMatch(mount.parts()::contains))
        .filter(mount -> mount.parts().stream().noneMatch(job.late().fronts()::contains))
        .map(mount -> need(mount.name(), Job.name(Verb.FIT, unit.name())));
  }
}
