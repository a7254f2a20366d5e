package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Placing;
import storyrod.build.Unit;
import storyrod.build.Verb;
import storyrod.piece.Joint;

/** A lid is slid into a box that stands, not built in with it. */
final class LidAfterBox implements Rule {
  @Override
  public String key() {
    return "lid-after-box";
  }

  @Override
  public String reason() {
    return "a sliding lid goes in only after the box that it slides in stands";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> job.late().isSliding(placing.unit()))
        .flatMap(placing -> needs(job, placing))
        .toList();
  }

  private Stream<Need> needs(Job job, Placing lid) {
    return waitedFor(job, lid).stream()
        .filter(unit -> !job.isLate(unit) || takes(job, unit, lid.unit()))
        .map(unit -> need(Job.name(Verb.FIT, unit.name()), Job.fit(lid)));
  }

  /** All units of its level if it can come in past them, else those that stand before it. */
  private static List<Unit> waitedFor(Job job, Placing lid) {
    return job.canComeLast(lid) ? job.others(lid) : job.before(lid);
  }

  /** Whether a unit has a groove in which the lid runs. */
  private static boolean takes(Job job, Unit unit, Unit lid) {
    return job.piece().joints().stream()
        .filter(Joint::slides)
        .anyMatch(
            joint ->
                lid.partNames().contains(joint.first())
                    && unit.partNames().contains(joint.second()));
  }
}
