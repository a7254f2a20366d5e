package storyrod.build;

import java.util.Set;
import storyrod.build.BuildPlan.Step;

/**
 * What a step takes of the shop.
 *
 * @param minutes of work
 * @param waitMinutes that pass before anything that needs it may start
 * @param whole whether it is not left half done overnight
 * @param glueUp its clamps, and what it leaves with fresh glue
 * @param touches what its clamps hold, or tools may tear open
 */
record Work(int minutes, int waitMinutes, boolean whole, GlueUp glueUp, Touches touches) {
  /** A work of which nothing is known but its times and its clamps. */
  Work(int minutes, int waitMinutes, boolean whole, int clamps) {
    this(
        minutes,
        waitMinutes,
        whole,
        new GlueUp(clamps, waitMinutes, 0),
        new Touches(Set.of(), false));
  }

  /**
   * What a work is done to.
   *
   * @param parts the full names of the parts that it moves or works on
   * @param machining whether its tool runs across glued joints
   */
  record Touches(Set<String> parts, boolean machining) {}

  /**
   * A step as one work: open glue does not wait for the morning, and further coats go on while it
   * waits. So the hands are free then for all but a coat's few minutes: near enough to weigh orders
   * of steps against each other, of which there are many. Whoever says when each coat goes on asks
   * {@link Spells}, where it is a work of its own.
   */
  static Work of(Step step) {
    int first = step.sessions().getFirst().minutes();
    return new Work(
        first,
        step.minutes() - first + step.waitMinutes(),
        step.glueUp().isSpread(),
        step.glueUp(),
        new Touches(ClampsInUse.touched(step), step.verb() == Verb.TRIM));
  }

  int clamps() {
    return glueUp.clamps();
  }

  /**
   * How long another work has to leave alone what this one has glued: clamps are in its way until
   * the glue has set, and a tool that runs across a joint waits until it has cured.
   */
  int keepsOff(Work other) {
    if (!glueUp.isSpread() || touches.parts.stream().noneMatch(other.touches.parts::contains)) {
      return 0;
    }
    return other.touches.machining
        ? Math.max(waitMinutes, glueUp.curedMinutes())
        : glueUp.clampMinutes();
  }
}
