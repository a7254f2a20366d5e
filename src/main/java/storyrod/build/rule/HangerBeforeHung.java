package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Operation;
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
        .filter(mount -> isHanger(job, mount))
        .map(mount -> need(mount.name(), Job.name(Verb.FIT, unit.name())));
  }

  private static boolean isHanger(Job job, Operation mount) {
    return switch (job.kind(mount)) {
      case PULL, KNOB, CATCH, ANTI_TIP_STRAP -> false;
      case SLIDE, UNDER_SLIDE, CONCEALED_HINGE, BUTT_HINGE, SHELF_PIN -> true;
      case WOOD_SCREW, POCKET_SCREW, BRAD, TOP_FASTENER, ROTATING_FASTENER -> true;
      case DOWEL, BISCUIT, LOOSE_TENON, PLUG, WASHER, BUTTON -> true;
      case FOOT, LEVELLING_FOOT, OTHER -> mount.parts().stream().noneMatch(job::isOfFront);
    };
  }
}
