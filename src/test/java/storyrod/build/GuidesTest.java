package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostics;
import storyrod.piece.Pieces;

/** Fences, stops and guides against distances worked out by hand, in millimetres. */
class GuidesTest {
  private static final String FRAME =
      """
      parts:
        post: {stock: odd, x: 0 to 40, y: 0 to 30, z: 0 to 400, grain: z}
        other: {stock: odd, x: 300 to 340, y: 0 to 30, z: 0 to 400, grain: z}
        rail: {stock: odd, x: 40 to 300, y: 0 to 30, z: 250 to 290, grain: x}
      joints:
        - half-lap: {end: rail.left, into: post, glue: yes}
        - half-lap: {end: rail.right, into: other, glue: yes}
      """;

  private static List<String> guides(String body, String operation, String term) {
    Diagnostics diagnostics = new Diagnostics();
    return Planner.plan(Pieces.of(body), diagnostics)
        .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()))
        .steps()
        .stream()
        .filter(
            step ->
                step.operations().stream()
                    .anyMatch(
                        each ->
                            each.name().equals(operation)
                                && each.cuts().stream().anyMatch(c -> c.term().equals(term))))
        .flatMap(step -> step.settings().stream())
        .filter(Guides::isOne)
        .filter(setting -> operation.endsWith(" " + setting.part().orElseThrow()))
        .map(setting -> setting.key() + " " + setting.value().toMm())
        .toList();
  }

  /** The rail is lapped from its ends over 40; the post from 250 to 290, 110 below its top. */
  @Test
  void lapsAreCutAtTheirShoulders() {
    assertEquals(
        List.of("stop-left 40.0", "stop-right 40.0"), guides(FRAME, "cut rail", "half-lap"));
    assertEquals(
        List.of("stop-top 110.0", "stop-top 150.0"), guides(FRAME, "cut post", "half-lap"));
  }

  /** Of 30 the tongue takes the middle 10. */
  @Test
  void bothWallsOfAnOpenMortiseAreGaugedFromOneSide() {
    String bridles = FRAME.replace("half-lap", "bridle");
    assertEquals(
        List.of("stop-front 10.0", "stop-front 20.0"),
        guides(bridles, "cut rail", "open mortise").stream().distinct().toList());
    assertEquals(
        List.of("stop-top 110.0", "stop-top 150.0"), guides(bridles, "cut post", "bridle cheek"));
  }

  private static final String BOARD =
      """
      parts:
        board: {stock: ash, x: 0 to 200, y: 0 to 20, z: 0 to 400, grain: z}
      cuts:
        - holes: {in: board.front, at: {x: 50, z: 100}, along: z, step: 32, count: 4, diameter: 6, depth: 10}
      """;

  /** Four holes 50 from the left edge; further ones beside them make rows 30 from the right. */
  @Test
  void rowsOfHolesAreSetOutFromTheNearerEdge() {
    assertEquals(List.of("line-left 50.0"), guides(BOARD, "drill board", "hole"));
    String two = BOARD + BOARD.substring(BOARD.indexOf("  - holes")).replace("x: 50", "x: 170");
    assertEquals(List.of("line-left 50.0", "line-right 30.0"), guides(two, "drill board", "hole"));
  }

  /** A fence pays for a row only. */
  @Test
  void singleHoleHasNoLine() {
    String one = BOARD.replace("along: z, step: 32, count: 4, ", "");
    assertEquals(List.of(), guides(one, "drill board", "hole"));
  }

  private static final String MITRED =
      """
      parts:
        side: {stock: odd, x: 0 to 30, y: 0 to 200, z: 0 to 300, grain: z}
        top: {stock: odd, x: 30 to 400, y: 0 to 200, z: 270 to 300, grain: x}
      joints:
        - mitre: {end: top.left, into: side, spline: pin, thickness: 4, depth: 6, glue: yes}
      """;

  /**
   * The mitre is 30 √2 = 42.43 long; the middle of the slot lies a third of that from the inner
   * edge, its nearer wall 2 less: 12.14.
   */
  @Test
  void slotAcrossACasesMitreIsMeasuredFromTheInnerEdge() {
    List<Double> insets =
        Planner.plan(Pieces.of(MITRED), new Diagnostics()).orElseThrow().steps().stream()
            .flatMap(step -> step.settings().stream())
            .filter(setting -> setting.key().equals("spline-inset"))
            .map(setting -> setting.value().toMm())
            .distinct()
            .toList();
    assertEquals(1, insets.size(), insets::toString);
    assertEquals(30 * Math.sqrt(2) / 3 - 2, insets.getFirst(), 0.01);
  }
}
