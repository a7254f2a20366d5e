package storyrod.build;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

/** How many clamps a step keeps from its start until its glue has set. */
public final class ClampsInUse {
  private ClampsInUse() {}

  static boolean isGlueUp(Step step) {
    return step.verb() == Verb.FIT && step.waitMinutes() > 0;
  }

  /** The full names of the parts that a step moves or works on. */
  public static Set<String> touched(Step step) {
    Set<String> parts = new LinkedHashSet<>(step.targets());
    parts.addAll(step.standing());
    return parts;
  }

  /** The clamps that a step wants, however many the shop has; none where nothing sets in them. */
  public static int by(Step step) {
    if (!isGlueUp(step)) {
      return 0;
    }
    List<Joint> pressed =
        step.operations().stream()
            .flatMap(operation -> operation.joints().stream())
            .filter(joint -> joint.glued() && joint.driven().isEmpty())
            .toList();
    Optional<Axis> axis = step.enters().map(Face::axis);
    return axis.map(along -> GlueUps.clampsFor(pressed, along)).orElse(0);
  }
}
