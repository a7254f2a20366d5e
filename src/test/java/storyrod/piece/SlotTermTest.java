package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A dado runs across the grain, a groove along it (common practice), however it is written. */
class SlotTermTest {
  @ParameterizedTest
  @CsvSource({
    "dado, z, dado, HOUSING",
    "dado, y, groove, HOUSING",
    "groove, z, dado, GROOVE",
    "groove, y, groove, GROOVE",
    "dado stop: 12, z, stopped dado, HOUSING",
    "dado stop: 12, y, stopped groove, HOUSING",
    "groove stopped: yes, z, stopped dado, STOPPED_GROOVE",
    "groove stopped: yes, y, stopped groove, STOPPED_GROOVE"
  })
  void theGrainTellsDadoAndGrooveApartAndLeavesTheRole(
      String written, String grain, String term, TrenchRole role) {
    String[] joint = written.split(" ", 2);
    String more = joint.length > 1 ? ", " + joint[1] : "";
    Piece piece =
        Pieces.of(
            """
            parts:
              side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 600, grain: %s}
              shelf: {stock: ply18, x: side.right to 418, y: 0 to 280, z: 200 to 218, grain: x}
            joints:
              - %s: {end: shelf.left, into: side, depth: 6%s}
            """
                .formatted(grain, joint[0], more));
    assertEquals(term, piece.part("side").cuts().getFirst().term());
    assertTrue(role.isOf(piece.part("side").cuts().getFirst()));
  }

  /** A panel of solid wood in grooves of two rails is free, whichever way their grain runs. */
  @ParameterizedTest
  @CsvSource({"groove, x, 1", "groove, y, 1", "dado, x, 0", "dado, y, 0"})
  void aPanelFloatsInGroovesOnly(String joint, String grain, int floating) {
    Piece piece =
        Pieces.of(
            """
            parts:
              low: {stock: ash, x: 0 to 400, y: 0 to 60, z: 0 to 20, grain: %2$s}
              high: {stock: ash, x: 0 to 400, y: 0 to 60, z: 220 to 240, grain: %2$s}
              panel: {stock: ash, x: 0 to 400, y: 20 to 40, z: low.top to high.bottom, grain: x}
            joints:
              - %1$s: {end: panel.bottom, into: low, depth: 6}
              - %1$s: {end: panel.top, into: high, depth: 6}
            """
                .formatted(joint, grain));
    assertEquals(floating, FloatingPanel.of(piece).size());
  }

  /** The groove for a tongue and that for a panel beside it are run with one setting. */
  @ParameterizedTest
  @CsvSource({"x", "y"})
  void aPanelSharesTheGrooveOfATongue(String grain) {
    Piece piece =
        Pieces.of(
            """
            parts:
              rail: {stock: ply18, x: 0 to 400, y: 0 to 60, z: 0 to 18, grain: %s}
              panel: {stock: ply6, x: 0 to 200, y: 27 to 33, z: rail.top to 218, grain: z}
              board: {stock: ply18, x: 200 to 400, y: 21 to 39, z: rail.top to 218, grain: z}
            joints:
              - groove: {end: panel.bottom, into: rail, depth: 6}
              - tongue: {end: board.bottom, into: rail, depth: 6, thickness: 6}
            """
                .formatted(grain));
    assertEquals(1, piece.part("rail").cuts().size());
  }
}
