package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.piece.Pieces;

/** A narrow rack of three shelves between two sides: six joints to close. */
class GlueTimesTest {
  private static final String RACK =
      """
      parts:
        left: {stock: ply18, x: 0 to 18, y: 0 to 100, z: 0 to 900, grain: z}
        right: {stock: ply18, x: 418 to 436, y: 0 to 100, z: 0 to 900, grain: z}
        low: {stock: ply18, x: 18 to 418, y: 0 to 100, z: 100 to 118, grain: x}
        middle: {stock: ply18, x: 18 to 418, y: 0 to 100, z: 400 to 418, grain: x}
        high: {stock: ply18, x: 18 to 418, y: 0 to 100, z: 700 to 718, grain: x}
      joints:
        - dado: {end: low.left, into: left, depth: 6, glue: yes}
        - dado: {end: low.right, into: right, depth: 6, glue: yes}
        - dado: {end: middle.left, into: left, depth: 6, glue: yes}
        - dado: {end: middle.right, into: right, depth: 6, glue: yes}
        - dado: {end: high.left, into: left, depth: 6, glue: yes}
        - dado: {end: high.right, into: right, depth: 6, glue: yes}
      """;

  private static List<Step> glueUps(String glue) {
    return Planner.plan(Pieces.of(RACK + glue), new Diagnostics()).orElseThrow().steps().stream()
        .filter(step -> step.verb() == Verb.FIT)
        .toList();
  }

  private static int mostJoints(List<Step> steps) {
    return steps.stream()
        .mapToInt(step -> step.operations().stream().mapToInt(each -> each.joints().size()).sum())
        .max()
        .orElseThrow();
  }

  @Test
  void aGlueThatStaysOpenLongEnoughClosesAllJointsAtOnce() {
    assertEquals(6, mostJoints(glueUps("")));
    assertEquals(6, mostJoints(glueUps("glue: {product: glue, open-minutes: 15}\n")));
  }

  @Test
  void aGlueThatSetsFastClosesFewerJointsAtOnce() {
    // A good minute for each joint: four in five minutes.
    List<Step> steps = glueUps("glue: {product: glue, open-minutes: 5}\n");
    assertTrue(mostJoints(steps) <= 4, () -> mostJoints(steps) + " joints");
  }

  /** The staves of each layer are glued edge to edge and harden before the layers are. */
  @Test
  void layersOfStavesWaitTwice() {
    assertEquals(1440, waitOfMilling("staves: 1"));
    assertEquals(2880, waitOfMilling("staves: 2"));
  }

  private static int waitOfMilling(String staves) {
    String slab =
        "parts:\n  slab: {stock: ash, x: 0 to 600, y: 0 to 120, z: 0 to 20, grain: x, layers: 2, "
            + staves
            + "}\n";
    return Planner.plan(Pieces.of(slab), new Diagnostics()).orElseThrow().steps().stream()
        .filter(step -> step.verb() == Verb.MILL)
        .mapToInt(Step::waitMinutes)
        .max()
        .orElseThrow();
  }

  @Test
  void clampsStayOnForAsLongAsTheGlueAsks() {
    assertEquals(60, glueUps("").getLast().waitMinutes());
    assertEquals(25, glueUps("glue: {product: glue, clamp-minutes: 25}\n").getLast().waitMinutes());
  }
}
