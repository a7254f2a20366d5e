package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Placing;
import storyrod.build.Unit;
import storyrod.build.Verb;
import storyrod.piece.Joint;

/**
 * A back that is screwed or nailed on from outside closes the case last: until then hands, clamps
 * and drivers come in from behind (common practice). One that screws alone hold stays off for the
 * finish and the hardware inside too, if the case is stiff without it. A back in grooves goes in
 * with the case.
 */
public final class BackLast implements Rule {
  public static final String KEY = "back-last";

  @Override
  public String key() {
    return KEY;
  }

  @Override
  public String reason() {
    return "a back that is screwed on from outside comes last: clamps and drivers need the open back";
  }

  @Override
  public List<Need> needs(Job job) {
    return job.placings().stream()
        .filter(placing -> job.late().isBack(placing.unit()))
        .flatMap(back -> needs(job, back))
        .toList();
  }

  private Stream<Need> needs(Job job, Placing back) {
    return Stream.concat(
        fitted(job, back), job.late().isRemovable(back.unit()) ? inside(job, back) : Stream.of());
  }

  /** The finish, and what hangs drawers and doors, whose screws are driven inside. */
  private Stream<Need> inside(Job job, Placing back) {
    return Stream.concat(
            job.all(Verb.FINISH),
            job.all(Verb.MOUNT).filter(m -> job.kind(m).isSlide() || job.kind(m).isHinge()))
        .map(work -> need(work.name(), Job.fit(back)));
  }

  private Stream<Need> fitted(Job job, Placing back) {
    return job.placings().stream()
        .filter(other -> other.unit().level().equals(back.unit().level()))
        .filter(other -> !job.isLate(other.unit()) && !job.late().isBack(other.unit()))
        .filter(other -> !isFixedTo(job, other.unit(), back.unit()))
        .filter(other -> !job.reach().ways(back.unit(), List.of(other.unit())).isEmpty())
        .map(other -> need(Job.fit(other), Job.fit(back)));
  }

  private static boolean isFixedTo(Job job, Unit unit, Unit back) {
    return job.piece().joints().stream()
        .filter(Joint::holding)
        .anyMatch(
            joint ->
                unit.partNames().contains(joint.first())
                    && back.partNames().contains(joint.second()));
  }
}
