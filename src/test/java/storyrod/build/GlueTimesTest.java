package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.description.GlueEntry;
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

  /** Shared reference of adhesives: a day for PVA and the like, three to seven for slow epoxy. */
  @Test
  void aPanelRestsAsLongAsItsGlueCures() {
    assertEquals(1440, waitOfMilling("staves: 1", "glue: {product: glue, kind: pva}\n"));
    assertEquals(72 * 60, waitOfMilling("staves: 1", "glue: {product: glue, kind: epoxy}\n"));
    assertEquals(600, waitOfMilling("staves: 1", "glue: {product: glue, cure-hours: 10}\n"));
    assertEquals(
        1200, waitOfMilling("staves: 2", "glue: {product: glue, kind: epoxy, cure-hours: 10}\n"));
  }

  /**
   * Shared reference of adhesives, time in clamps: PVA 1 to 2 h, hide glue 2 to 6 h hot and 6 to 12
   * h liquid, slow epoxy 6 to 24 h, polyurethane 1 to 4 h, plastic resin 6 to 16 h.
   */
  @ParameterizedTest
  @CsvSource({
    "pva, 60, 120",
    "slow-pva, 60, 120",
    "hide-glue, 120, 360",
    "hide-glue, 360, 720",
    "epoxy, 360, 1440",
    "polyurethane, 60, 240",
    "plastic-resin, 360, 960"
  })
  void clampsStayOnAsLongAsTheSortOfGlueAsks(String kind, int least, int most) {
    int waits =
        glueUps("glue: {product: glue, kind: " + kind + "}\n").stream()
            .mapToInt(Step::waitMinutes)
            .max()
            .orElseThrow();
    assertTrue(least <= waits && waits <= most, () -> kind + " " + waits);
  }

  @Test
  void whatTheLabelSaysOfTheClampsCounts() {
    List<Step> steps = glueUps("glue: {product: glue, kind: hide-glue, clamp-minutes: 45}\n");
    assertEquals(45, steps.stream().mapToInt(Step::waitMinutes).max().orElseThrow());
  }

  @Test
  void everySortOfGlueCures() {
    GlueEntry.KINDS.forEach(kind -> assertTrue(GlueTimes.usualHours(kind) > 0, kind));
    assertEquals(Set.copyOf(GlueEntry.KINDS), Figures.read("glues.csv").keySet());
  }

  @Test
  void toolsWaitForTheGlueOfThePiece() {
    assertEquals(
        Set.of(36 * 60),
        glueUps("glue: {product: glue, cure-hours: 36}\n").stream()
            .map(step -> step.glueUp().curedMinutes())
            .filter(minutes -> minutes > 0)
            .collect(Collectors.toSet()));
  }

  /** Where a maker's words glue one, `StepsInTimeTest` has the wait. */
  @Test
  void dryPegsWaitForNothing() {
    String frame =
        """
        parts:
          post: {stock: ash, x: 0 to 60, y: 0 to 20, z: 0 to 400, grain: z}
          rail: {stock: ash, x: 60 to 400, y: 0 to 20, z: 300 to 360, grain: x}
        joints:
          - tongue: {end: rail.left, into: post, depth: 20, thickness: 7, peg: dowel-6-by-30-mm, pegs: 1, peg-from: front}
        """;
    Step pegged =
        Planner.plan(Pieces.of(frame), new Diagnostics()).orElseThrow().steps().stream()
            .filter(step -> step.tools().contains("flush-saw"))
            .findFirst()
            .orElseThrow();
    assertEquals(0, pegged.waitMinutes());
    assertTrue(!pegged.tools().contains("glue-brush"), pegged::toString);
  }

  private static int waitOfMilling(String staves) {
    return waitOfMilling(staves, "");
  }

  private static int waitOfMilling(String staves, String glue) {
    String slab =
        "parts:\n  slab: {stock: ash, x: 0 to 600, y: 0 to 120, z: 0 to 20, grain: x, layers: 2, "
            + staves
            + "}\n";
    return Planner.plan(Pieces.of(slab + glue), new Diagnostics()).orElseThrow().steps().stream()
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
