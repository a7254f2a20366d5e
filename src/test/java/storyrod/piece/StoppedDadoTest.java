package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * Dados that end short of an edge, and the notches that hide them; all figures are worked by hand.
 */
class StoppedDadoTest {
  /** A shelf 400 wide and 300 deep lies 6 deep in a side 18 thick; the dado ends 12 short. */
  private static final String SHELF =
      """
      parts:
        side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 600, grain: z}
        shelf: {stock: ply18, x: side.right to 418, y: 0 to 300, z: 200 to 218, grain: x}
      joints:
        - dado: {end: shelf.left, into: side, depth: 6, stop: 12}
      """;

  private static Cut.Trench only(Piece piece, String part) {
    List<Cut> cuts = piece.part(part).cuts();
    assertEquals(1, cuts.size(), cuts::toString);
    return (Cut.Trench) cuts.getFirst();
  }

  private static Range mm(long from, long to) {
    return new Range(Length.mm(from), Length.mm(to));
  }

  private static List<String> codes(String description) {
    return Pieces.faultsOf(description).stream().map(Diagnostic::code).toList();
  }

  /** The side loses 288 × 18 × 6, the shelf, 406 long with what goes in, 12 × 18 × 6. */
  @Test
  void theNotchTakesWhatTheDadoLeaves() {
    Piece piece = Pieces.of(SHELF);
    assertEquals("stopped dado", only(piece, "side").term());
    assertEquals(mm(12, 300), only(piece, "side").removed().y());
    assertEquals(600 * 300 * 18 - 288 * 18 * 6, piece.part("side").solid().volumeMm3(), 0.01);
    assertEquals("notch", only(piece, "shelf").term());
    assertEquals(mm(0, 12), only(piece, "shelf").removed().y());
    assertEquals(mm(12, 18), only(piece, "shelf").removed().x());
    assertEquals(406 * 300 * 18 - 12 * 18 * 6, piece.part("shelf").solid().volumeMm3(), 0.01);
  }

  @Test
  void itEndsShortOfTheEdgeThatIsNamed() {
    Piece piece = Pieces.of(SHELF.replace("stop: 12", "stop: 12, edge: back"));
    assertEquals(mm(0, 288), only(piece, "side").removed().y());
    assertEquals(mm(288, 300), only(piece, "shelf").removed().y());
  }

  /** A shelf 5 behind the front of the side is notched 12 - 5 = 7, one 12 behind it not at all. */
  @Test
  void theStopIsMeasuredFromTheEdgeOfTheSide() {
    Piece piece = Pieces.of(SHELF.replace("418, y: 0", "418, y: 5"));
    assertEquals(mm(12, 300), only(piece, "side").removed().y());
    assertEquals(mm(5, 12), only(piece, "shelf").removed().y());
    Piece flush = Pieces.of(SHELF.replace("418, y: 0", "418, y: 12"));
    assertEquals(mm(12, 300), only(flush, "side").removed().y());
    assertEquals(List.of(), flush.part("shelf").cuts());
  }

  @Test
  void itMayNotShowInFrontOfTheShelfNorHoldNothing() {
    String setBack = SHELF.replace("418, y: 0", "418, y: 12.1");
    assertEquals(List.of("dado-stop"), codes(setBack));
    assertEquals(List.of(), codes(setBack.replace("stop: 12", "stop: 12.1")));
    assertEquals(List.of("dado-stop"), codes(SHELF.replace("stop: 12", "stop: 300")));
    assertEquals(List.of(), codes(SHELF.replace("stop: 12", "stop: 299")));
  }

  @Test
  void anEdgeMustLieAcrossTheDadoAndHaveAStop() {
    assertEquals(List.of("dado-edge"), codes(SHELF.replace("stop: 12", "stop: 12, edge: top")));
    assertEquals(List.of("dado-edge"), codes(SHELF.replace("stop: 12", "edge: front")));
  }

  @Test
  void aPartThatLeansCannotBeStopped() {
    String leaning =
        """
        parts:
          seat: {stock: ply18, x: 0 to 500, y: 0 to 300, z: 400 to 418, grain: x}
          leg: {stock: ash, x: 80 to 100, y: 20 to 280, z: 0 to 400, grain: z, turn: {about: y, by: 10, at: {x: leg.right, z: 400}}}
        cuts:
          - bevel: {end: leg.top, to: seat.bottom}
        joints:
          - dado: {end: leg.top, into: seat, depth: 6, stop: 30}
        """;
    assertEquals(List.of("joint-askew"), codes(leaning));
    assertEquals(List.of(), codes(leaning.replace(", stop: 30", "")));
  }
}
