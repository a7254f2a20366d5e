package storyrod.build;

import java.util.List;
import java.util.Set;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Joint;

/**
 * What a step takes of the shop.
 *
 * @param minutes of work
 * @param waitMinutes that pass before anything that needs it may start
 * @param whole whether it is not left half done overnight
 * @param clamps that are in use from its start until it has waited
 * @param glue what its clamps hold, or tools may tear open; empty where it glues nothing
 */
record Work(int minutes, int waitMinutes, boolean whole, int clamps, Glue glue) {
  /** As long as a panel of boards rests before it is planed. */
  private static final int CURE_MINUTES = Figures.STANDARD.waiting(List.of("mill-panel"));

  /** A work of which nothing is known but its times and its clamps. */
  Work(int minutes, int waitMinutes, boolean whole, int clamps) {
    this(minutes, waitMinutes, whole, clamps, new Glue(Set.of(), false, false));
  }

  /**
   * What a work has to do with glue.
   *
   * @param touched the full names of the parts that it moves or works on
   * @param spread whether it leaves joints of theirs with fresh glue
   * @param machining whether its tool runs across glued joints
   */
  record Glue(Set<String> touched, boolean spread, boolean machining) {}

  /**
   * A step as one work: open glue does not wait for the morning, and further coats go on while it
   * waits.
   */
  static Work of(Step step) {
    Set<String> touched = ClampsInUse.touched(step);
    int first = step.sessions().getFirst().minutes();
    return new Work(
        first,
        step.minutes() - first + step.waitMinutes(),
        ClampsInUse.isGlueUp(step),
        ClampsInUse.by(step),
        new Glue(touched, isSpread(step), step.verb() == Verb.TRIM));
  }

  private static boolean isSpread(Step step) {
    return step.operations().stream()
        .flatMap(each -> each.joints().stream())
        .anyMatch(Joint::glued);
  }

  /**
   * How long another work has to leave alone what this one has glued: clamps are in its way until
   * the glue has set, and a tool that runs across a joint waits until it has cured.
   */
  int keepsOff(Work other) {
    boolean isSame = glue.spread && glue.touched.stream().anyMatch(other.glue.touched::contains);
    if (!isSame) {
      return 0;
    }
    return other.glue.machining
        ? Math.max(waitMinutes, CURE_MINUTES)
        : clamps > 0 ? waitMinutes : 0;
  }
}
