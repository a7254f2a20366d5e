package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.Drawing.Arrow;
import storyrod.planset.PlanSet;

/** An arrow along the way of a part or of hardware has a shaft, or it shows no way. */
class ArrowShaftsTest {
  @TestFactory
  List<DynamicTest> noArrowIsAHeadAlone() {
    return AllProjects.each(sample -> assertShafts(sample.set()));
  }

  private static void assertShafts(PlanSet set) {
    int arrows = 0;
    for (Step step : set.build().steps()) {
      Drawing drawing = set.drawings().steps().get(step.number());
      boolean isFitting = !CutPicture.isFor(step) && !Strips.isFor(step);
      if (isFitting && drawing != null) {
        for (Drawing.Element each : drawing.elements()) {
          if (each instanceof Arrow arrow) {
            arrows++;
            double length = arrow.from().distance(arrow.to());
            assertTrue(length > 1.2 * Lowering.Head.MOTION.length, step.number() + ": " + length);
          }
        }
      }
    }
    assertTrue(arrows > 0, "no step has an arrow");
  }
}
