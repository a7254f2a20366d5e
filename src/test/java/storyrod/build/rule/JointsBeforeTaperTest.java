package storyrod.build.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.description.Diagnostics;
import storyrod.piece.Pieces;

/**
 * A tapered leg lies on no table as it did square, so its joints are cut before (common practice).
 */
class JointsBeforeTaperTest {
  private static final String LEG =
      """
      parts:
        leg: {stock: ash, x: 0 to 20, y: 0 to 60, z: 0 to 400, grain: z}
        rail: {stock: ash, x: 20 to 300, y: 20 to 40, z: 320 to 390, grain: x}
      joints:
        - tenon: {end: rail.left, into: leg, depth: 12, thickness: 7, glue: yes}
      cuts:
        - chamfer: {in: leg, edges: front-left, size: 3}
        - taper: {end: leg.bottom, faces: [back], from: 250, off: 10}
        - holes: {in: leg.left, at: {y: 30, z: 40}, diameter: 8, depth: 10}
      """;

  @Test
  void legIsMortisedAndDrilledThenTaperedThenChamfered() {
    Diagnostics diagnostics = new Diagnostics();
    BuildPlan plan =
        Planner.plan(Pieces.of(LEG), diagnostics)
            .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
    List<String> terms =
        plan.steps().stream()
            .flatMap(step -> step.operations().stream())
            .filter(each -> each.target().equals("leg") && !each.cuts().isEmpty())
            .map(each -> each.cuts().getFirst().term())
            .toList();
    assertEquals(List.of("mortise", "hole", "taper", "chamfer"), terms);
  }

  /** Without the rule, nothing but their rank keeps the joints before it. */
  @Test
  void everyOtherOperationOnTheLegIsTiedToTheTaper() {
    BuildPlan plan = Planner.plan(Pieces.of(LEG), new Diagnostics()).orElseThrow();
    assertEquals(
        List.of("cut leg", "drill leg"),
        plan.needs().stream()
            .filter(need -> need.rule().equals("joints-before-taper"))
            .map(BuildPlan.Need::before)
            .toList());
  }
}
