package storyrod.planset;

import java.util.List;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Schedule;

/** Which clamps come off before a step, as the schedule has it. */
record ClampsOff(List<Schedule.Off> off) {
  /** The numbers of the steps whose clamps a step takes off. */
  List<Integer> of(Step step) {
    return off.stream()
        .filter(each -> each.before() == step.number())
        .map(Schedule.Off::glued)
        .sorted()
        .toList();
  }

  /** Whether the clamps of a step come off in a later one. */
  boolean isLater(Step step) {
    return off.stream().anyMatch(each -> each.glued() == step.number());
  }
}
