package storyrod.build;

import storyrod.build.BuildPlan.Step;

/**
 * What a step takes of the shop.
 *
 * @param minutes of work
 * @param waitMinutes that pass before anything that needs it may start
 * @param whole whether it is not left half done overnight
 * @param clamps that are in use from its start until it has waited
 */
record Work(int minutes, int waitMinutes, boolean whole, int clamps) {
  /** Open glue does not wait for the morning. */
  static Work of(Step step) {
    return new Work(
        step.minutes(), step.waitMinutes(), ClampsInUse.isGlueUp(step), ClampsInUse.by(step));
  }
}
