package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Grooves that end where their panel ends; all figures are worked by hand. */
class StoppedGrooveTest {
  /** A side 300 long between a front and a back of 18, and a bottom that lies 6 deep in all. */
  private static final String BOX =
      """
      parts:
        side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 90, grain: y}
        front: {stock: ply18, x: side.right to 200, y: 0 to 18, z: 0 to 90, grain: x}
        bottom: {stock: ply6, x: side.right to 200, y: front.back to 282, z: 10 to 16, grain: x}
      joints:
        - groove: {end: bottom.left, into: side, depth: 6, stopped: yes}
        - groove: {end: bottom.front, into: front, depth: 6}
      """;

  private static Cut.Trench groove(Piece piece, String part) {
    return (Cut.Trench) piece.part(part).cuts().getFirst();
  }

  /** The bottom is lengthened by 6 less 0.5 of room at the front: its groove runs 12.5 to 282. */
  @Test
  void itEndsWhereTheLengthenedPanelEnds() {
    Piece piece = Pieces.of(BOX);
    Range run = new Range(Length.micrometres(12_500), Length.mm(282));
    assertEquals(run, groove(piece, "side").removed().y());
    assertEquals("stopped groove", groove(piece, "side").term());
    assertEquals(300 * 90 * 18 - 269.5 * 6 * 6, piece.part("side").solid().volumeMm3(), 0.01);
  }

  @Test
  void otherwiseItRunsThrough() {
    Piece piece = Pieces.of(BOX);
    assertEquals(piece.part("front").box().x(), groove(piece, "front").removed().x());
    assertEquals("groove", groove(piece, "front").term());
  }

  @Test
  void aPanelThatLeansCannotBeStopped() {
    String leaning =
        """
        parts:
          seat: {stock: ply18, x: 0 to 500, y: 0 to 300, z: 400 to 418, grain: x}
          leg: {stock: ash, x: 80 to 100, y: 20 to 280, z: 0 to 400, grain: z, turn: {about: y, by: 10, at: {x: leg.right, z: 400}}}
        cuts:
          - bevel: {end: leg.top, to: seat.bottom}
        joints:
          - groove: {end: leg.top, into: seat, depth: 6, stopped: yes}
        """;
    List<String> codes = Pieces.faultsOf(leaning).stream().map(Diagnostic::code).toList();
    assertEquals(List.of("joint-askew"), codes);
    assertEquals(List.of(), Pieces.faultsOf(leaning.replace(", stopped: yes", "")));
  }
}
