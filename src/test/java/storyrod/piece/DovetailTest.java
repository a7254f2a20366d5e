package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.Dovetails.Tail;

/** Dovetails, through and half-blind; all figures are worked by hand. */
public class DovetailTest {
  /** Tails on a board 20 mm thick and 100 wide, pins on the end of one 30 mm thick. */
  public static final String CORNER =
      """
      parts:
        pin-board: {stock: odd, x: 0 to 30, y: 0 to 400, z: 0 to 100, grain: y}
        tail-board: {stock: ash, x: pin-board.right to 300, y: 380 to 400, z: 0 to 100, grain: x}
      joints:
        - dovetail: {end: tail-board.left, into: pin-board, tails: 2, slope: 6, pin: 10, half-pin: 10, glue: yes}
      """;

  private static final String BLIND = CORNER.replace("glue", "lap: 6, glue");

  private static Dovetails row(Piece piece, String part) {
    return (Dovetails) piece.part(part).cuts().getFirst();
  }

  private static Range mm(long from, long to) {
    return new Range(Length.mm(from), Length.mm(to));
  }

  /**
   * 100 less three pins of 10 leaves two tails of 35, which narrow by 30/6 = 5 at each side to 25.
   * Each is (35 + 25)/2 x 30 x 20 = 18,000: the board has 270 x 100 x 20 + 36,000 = 576,000, the
   * other 30 x 400 x 100 - 36,000 = 1,164,000.
   */
  @Test
  void tailsFillTheirSockets() {
    Piece piece = Pieces.of(CORNER);
    assertEquals(Length.mm(300), piece.part("tail-board").finishedLength());
    assertEquals(
        List.of(new Tail(mm(15, 40), mm(10, 45)), new Tail(mm(60, 85), mm(55, 90))),
        row(piece, "tail-board").tails());
    assertEquals(576_000, piece.part("tail-board").solid().volumeMm3(), 0.01);
    assertEquals(1_164_000, piece.part("pin-board").solid().volumeMm3(), 0.01);
    assertEquals(0, shared(piece), 0.001);
  }

  /**
   * A lap of 6 makes tails of 24, which narrow by 4 to 27: (35 + 27)/2 x 24 x 20 = 14,880 each. The
   * board has 270 x 100 x 20 + 29,760 = 569,760, the other 1,200,000 - 29,760 = 1,170,240.
   */
  @Test
  void halfBlindTailsEndInsideTheOtherBoard() {
    Piece piece = Pieces.of(BLIND);
    assertEquals(Length.mm(294), piece.part("tail-board").finishedLength());
    assertEquals(569_760, piece.part("tail-board").solid().volumeMm3(), 0.01);
    assertEquals(1_170_240, piece.part("pin-board").solid().volumeMm3(), 0.01);
    assertEquals("half-blind pins", row(piece, "pin-board").term());
    assertEquals(Face.BACK, row(piece, "pin-board").from());
    assertEquals(0, shared(piece), 0.001);
  }

  private static double shared(Piece piece) {
    return piece.part("tail-board").solid().sharedVolumeMm3(piece.part("pin-board").solid());
  }

  /** The tail board's back is flush with the pin board's end, so it comes in to the front. */
  @Test
  void tailsComeInAcrossTheirOwnFace() {
    assertEquals(Face.FRONT, Pieces.of(CORNER).joints().getFirst().entry());
    String front = CORNER.replace("y: 380 to 400", "y: 0 to 20");
    assertEquals(Face.BACK, Pieces.of(front).joints().getFirst().entry());
  }

  /** Half of 20 mm is 10 for pins and half pins; white ash is a hardwood: 1:8. */
  @Test
  void usualPinsAndSlopeFollowFromTheBoards() {
    String usual = CORNER.replace("slope: 6, pin: 10, half-pin: 10, ", "");
    Dovetails row = row(Pieces.of(usual), "tail-board");
    assertEquals(Rational.of(8, 1), row.slope());
    assertEquals(List.of(Length.mm(10), Length.mm(10), Length.mm(10)), row.pins());
    String ply = usual.replace("stock: ash", "stock: ply18").replace("380", "382");
    Dovetails sheet = row(Pieces.of(ply), "tail-board");
    assertEquals(Rational.of(7, 1), sheet.slope());
    assertEquals(Length.mm(9), sheet.pins().getFirst());
  }

  @Test
  void edgesOfAWiderPinBoardAreLeftAsHalfPins() {
    Piece piece = Pieces.of(CORNER.replace("z: 0 to 100, grain: y", "z: 0 to 120, grain: y"));
    assertEquals(
        List.of(Length.mm(10), Length.mm(10), Length.mm(30)), row(piece, "pin-board").pins());
  }

  @Test
  void mirroredBoardsShareAMark() {
    Piece piece =
        Pieces.of(
            """
            parts:
              front: {stock: odd, x: 0 to 300, y: 0 to 30, z: 0 to 101, grain: x}
              left: {stock: ash, x: 0 to 20, y: 30 to 200, z: 0 to 101, grain: y}
              right: {stock: ash, x: 280 to 300, y: 30 to 200, z: 0 to 101, grain: y}
            joints:
              - dovetail: {end: left.front, into: front, tails: 3, lap: 7}
              - dovetail: {end: right.front, into: front, tails: 3, lap: 7}
            """);
    assertEquals(piece.part("left").mark(), piece.part("right").mark());
  }

  @Test
  void faultsAreTold() {
    assertCodes(List.of(), CORNER.replace("glue", "lap: 29.9, glue"));
    assertCodes(List.of("dovetail-depth"), CORNER.replace("glue", "lap: 30, glue"));
    assertCodes(List.of("dovetail-corner"), CORNER.replace("y: 380 to 400", "y: 300 to 320"));
    assertCodes(
        List.of("lap-outside"), CORNER.replace("z: 0 to 100, grain: x", "z: 1 to 101, grain: x"));
    assertCodes(
        List.of("dovetail-end"), CORNER.replace("z: 0 to 100, grain: x", "z: 0 to 100, grain: z"));
    assertCodes(List.of("dovetail-end"), CORNER.replace("grain: y", "grain: z"));
    // 100 - 2 x 10 - 4 x 10 = 40 for five tails of 8, which narrow by 5 at each side
    assertCodes(List.of("dovetail-layout"), CORNER.replace("tails: 2", "tails: 5"));
    assertCodes(List.of(), CORNER.replace("tails: 2", "tails: 4"));
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
    assertTrue(faults.stream().noneMatch(fault -> fault.hints().isEmpty()));
  }
}
