package storyrod.build.rule;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Placing;
import storyrod.build.Unit;
import storyrod.piece.Joint;

/**
 * A back that is screwed or nailed on from outside closes the case last: until then hands, clamps
 * and drivers come in from behind (common practice). A back in grooves goes in with the case.
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
