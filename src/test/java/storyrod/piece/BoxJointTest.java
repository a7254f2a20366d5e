package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Fingers at a corner; all figures are worked by hand. */
class BoxJointTest {
  /** A side of 18 mm and a front of 20, both 90 wide: nine fingers of 10. */
  private static final String CORNER =
      """
      parts:
        side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 90, grain: y}
        front: {stock: ash, x: side.right to 400, y: 0 to 20, z: 0 to 90, grain: x}
      joints:
        - box-joint: {end: front.left, into: side, finger: 10, glue: yes}
      """;

  private static Comb comb(Piece piece, String part) {
    return (Comb) piece.part(part).cuts().getFirst();
  }

  /**
   * Front 400 x 20 x 90 - 4 sockets of 18 x 20 x 10 = 705,600; side 18 x 300 x 90 - 5 sockets of 18
   * x 20 x 10 = 468,000.
   */
  @Test
  void fingersLieBetweenEachOther() {
    Piece piece = Pieces.of(CORNER);
    assertEquals(Length.mm(400), piece.part("front").finishedLength());
    assertEquals(705_600, piece.part("front").solid().volumeMm3(), 0.01);
    assertEquals(468_000, piece.part("side").solid().volumeMm3(), 0.01);
    assertEquals(0, piece.part("front").solid().sharedVolumeMm3(piece.part("side").solid()), 0.001);
    assertEquals(Face.LEFT, comb(piece, "front").from());
    assertEquals(Face.FRONT, comb(piece, "side").from());
  }

  @Test
  void boardThatStartsHasTheFingerAtTheBottom() {
    assertEquals(
        new Range(Length.mm(10), Length.mm(20)),
        comb(Pieces.of(CORNER), "front").sockets().getFirst());
    assertEquals(
        new Range(Length.ZERO, Length.mm(10)),
        comb(Pieces.of(CORNER.replace("glue", "starts: into, glue")), "front")
            .sockets()
            .getFirst());
  }

  /** Seven fingers in 90 mm: 12.857 each, rounded to a tick and never summed up. */
  @Test
  void numberOfFingersDividesTheWidthEvenly() {
    Piece piece = Pieces.of(CORNER.replace("finger: 10", "fingers: 7"));
    assertEquals(3, comb(piece, "front").sockets().size());
    assertEquals(4, comb(piece, "side").sockets().size());
    assertEquals(Length.mm(90), comb(piece, "side").sockets().getLast().to());
    assertEquals(77_143, comb(piece, "front").sockets().getLast().to().toMicrometres());
  }

  /** Eleven fingers of 8 and 2 mm left over. */
  @Test
  void lastFingerTakesWhatIsLeft() {
    Piece piece = Pieces.of(CORNER.replace("finger: 10", "finger: 8"));
    assertEquals(new Range(Length.mm(88), Length.mm(90)), comb(piece, "front").sockets().getLast());
  }

  @Test
  void faultsAreTold() {
    assertCodes(List.of("box-joint-fingers"), CORNER.replace("finger: 10, ", ""));
    assertCodes(
        List.of("box-joint-fingers"), CORNER.replace("finger: 10", "finger: 10, fingers: 9"));
    assertCodes(List.of("box-joint-fingers"), CORNER.replace("finger: 10", "finger: 45"));
    assertCodes(List.of(), CORNER.replace("finger: 10", "finger: 44.9"));
    assertCodes(List.of("box-joint-corner"), CORNER.replace("y: 0 to 20", "y: 1 to 21"));
    assertCodes(
        List.of("box-joint-widths"),
        CORNER.replace("z: 0 to 90, grain: x", "z: 0 to 80, grain: x"));
    assertCodes(
        List.of("slot-takes-end"),
        CORNER.replace("end: front.left, into: side", "end: side.right, into: front"));
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
  }
}
