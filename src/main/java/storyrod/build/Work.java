package storyrod.build;

import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

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
    boolean isGlueUp = step.verb() == Verb.FIT && step.waitMinutes() > 0;
    return new Work(step.minutes(), step.waitMinutes(), isGlueUp, isGlueUp ? clamps(step) : 0);
  }

  private static int clamps(Step step) {
    List<Joint> pressed =
        step.operations().stream()
            .flatMap(operation -> operation.joints().stream())
            .filter(joint -> joint.glued() && joint.driven().isEmpty())
            .toList();
    Optional<Axis> axis = step.enters().map(Face::axis);
    return axis.map(along -> GlueUps.clampsFor(pressed, along)).orElse(0);
  }
}
