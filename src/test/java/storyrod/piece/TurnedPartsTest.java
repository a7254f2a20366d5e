package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Axis;
import storyrod.measure.Length;

/** Splayed legs against trigonometry worked by hand: sin 10° = 0.173648, cos 10° = 0.984808. */
class TurnedPartsTest {
  private static final double SIN = 0.1736482;
  private static final double COS = 0.9848078;
  private static final double TAN = 0.1763270;

  private static final String SEAT =
      """
      parts:
        seat: {stock: ply18, x: 0 to 500, y: 0 to 300, z: 400 to 418, grain: x}
        left: {stock: ash, x: 80 to 100, y: 20 to 280, z: 0 to 400, grain: z, turn: {about: y, by: 10, at: {x: left.right, z: 400}}}
        right: {stock: ash, x: 400 to 420, y: 20 to 280, z: 0 to 400, grain: z, turn: {about: y, by: -10, at: {x: right.left, z: 400}}}
        rail: {stock: ash, x: 100 to 400, y: 140 to 160, z: 150 to 200, grain: x}
      """;
  private static final String ENDS =
      """
      cuts:
        - bevel: {end: left.top, to: seat.bottom}
        - bevel: {end: right.top, to: seat.bottom}
        - bevel: {end: left.bottom, level: 0}
        - bevel: {end: right.bottom, level: 0}
        - mitre: {end: rail.left, to: left.right}
        - mitre: {end: rail.right, to: right.left}
      """;

  @Test
  void partThatIsNotTurnedIsPlacedAsItIs() {
    Part seat = Pieces.of(SEAT).part("seat");
    assertSame(seat.solid(), seat.placed());
    assertSame(seat.box(), seat.bounds());
  }

  /** A board of 20 x 400 leaning by a: 400 cos a + 20 sin a high, 400 sin a + 20 cos a wide. */
  @Test
  void boundsOfALeaningBoardAreThoseOfTheTurnedRectangle() {
    Part left = Pieces.of(SEAT).part("left");
    assertEquals(400 * COS + 20 * SIN, left.bounds().size(Axis.Z).toMm(), 1e-3);
    assertEquals(400 * SIN + 20 * COS, left.bounds().size(Axis.X).toMm(), 1e-3);
    assertEquals(Length.mm(260), left.bounds().size(Axis.Y));
    assertEquals(Length.mm(400), left.finishedLength());
  }

  /** Foot out to the left: the right-hand rule about y turns z towards x. */
  @Test
  void turnAboveZeroAboutYMovesTheFootLeft() {
    Part left = Pieces.of(SEAT).part("left");
    assertTrue(left.bounds().x().from().toMm() < 80 - 400 * SIN + 1);
  }

  /**
   * From the seat to the floor 400 upright; along the board each face is 400 / cos a, and the slant
   * of both ends lets one reach 20 tan a past the other.
   */
  @Test
  void legCutToSeatAndFloorIsAsLongAsTheHandWorksOut() {
    Part left = Pieces.of(SEAT + ENDS).part("left");
    assertEquals(400 / COS + 20 * TAN, left.finishedLength().toMm(), 1e-3);
    assertEquals(0, left.bounds().z().from().toMm(), 1e-3);
    assertEquals(400, left.bounds().z().to().toMm(), 1e-3);
  }

  /** At height z the inner faces are 300 + 2 (400 - z) tan a apart; the long edge is at 150. */
  @Test
  void railBetweenSplayedLegsEndsAtTheirFaces() {
    Part rail = Pieces.of(SEAT + ENDS).part("rail");
    assertEquals(300 + 2 * 250 * TAN, rail.finishedLength().toMm(), 1e-3);
    Slanted.Slope mitre = (Slanted.Slope) rail.cuts().getFirst();
    assertEquals("10°", mitre.angle().toString());
    assertEquals(50 * TAN, mitre.drop().toMm(), 1e-3);
  }

  @Test
  void legsSplayedBothWaysAreOnePart() {
    Piece piece =
        Pieces.of(
            SEAT
                + ENDS
                + """
                joints:
                  - dado: {end: left.top, into: seat, depth: 6, glue: yes}
                  - dado: {end: right.top, into: seat, depth: 6, glue: yes}
                  - screws: {through: left.left, into: rail, count: 2, screw: screw}
                  - screws: {through: right.right, into: rail, count: 2, screw: screw}
                """);
    Mark legs = piece.mark(piece.part("left").mark());
    assertEquals(List.of("left", "right"), legs.parts());
    assertEquals(2, legs.same());
  }

  /** Walls lean by a: over 6 deep they shift by 6 tan a; the leg grows by 6 / cos a. */
  @Test
  void dadoForALeaningLegLeansToo() {
    Piece piece =
        Pieces.of(SEAT + ENDS + "joints:\n  - dado: {end: left.top, into: seat, depth: 6}\n");
    Slanted.Housing slot = (Slanted.Housing) piece.part("seat").cuts().getFirst();
    assertEquals(6 * TAN, slot.shift().abs().toMm(), 1e-3);
    assertEquals(20 / COS, slot.mouth().length().toMm(), 1e-3);
    assertEquals("10°", slot.lean().toString());
    assertEquals(406 / COS + 20 * TAN, piece.part("left").finishedLength().toMm(), 1e-3);
    double shared = piece.part("left").placed().sharedVolumeMm3(piece.part("seat").placed());
    assertEquals(0, shared, 1);
    assertEquals(500 * 300 * 18 - 20 / COS * 300 * 6, piece.part("seat").solid().volumeMm3(), 1);
  }

  /** The screw is square to the leg, so its bore in the rail rises or falls by sin a. */
  @Test
  void pilotHolesInALevelRailAreBoredInPlaceAlongTheScrew() {
    Piece piece =
        Pieces.of(
            SEAT
                + ENDS
                + "joints:\n  - screws: {through: left.left, into: rail, count: 2, screw: screw}\n");
    InPlace bored =
        (InPlace)
            piece.part("rail").cuts().stream()
                .filter(InPlace.class::isInstance)
                .findFirst()
                .orElseThrow();
    assertEquals("left", bored.through());
    assertEquals(Length.mm(20), bored.depth());
    InPlace.Bore bore = bored.bores().getFirst();
    assertEquals(20 * COS, bore.end().x().minus(bore.mouth().x()).toMm(), 1e-3);
    assertEquals(20 * SIN, bore.mouth().z().minus(bore.end().z()).abs().toMm(), 1e-3);
    assertEquals(2, piece.part("rail").solid().bores().size());
  }

  /** A 40 mm screw through 18 mm of seat, of which the leg's end takes 6: 40 - 12 from that end. */
  @Test
  void pilotHolesInAHousedLegStartAtItsEnd() {
    Piece piece =
        Pieces.of(
            SEAT
                + ENDS
                + "joints:\n"
                + "  - dado: {end: left.top, into: seat, depth: 6}\n"
                + "  - screws: {through: seat.top, into: left, count: 2, screw: screw}\n");
    InPlace bored =
        (InPlace)
            piece.part("left").cuts().stream()
                .filter(InPlace.class::isInstance)
                .findFirst()
                .orElseThrow();
    assertEquals(28, bored.depth().toMm(), 1e-3);
    InPlace.Bore bore = bored.bores().getFirst();
    double length = bore.end().toMm().distance(bore.mouth().toMm());
    assertEquals(28, length, 1e-3);
    double mouth = piece.part("left").pose().point(bore.mouth().toMm()).getZ();
    assertEquals(406, mouth, 1e-3);
  }

  @Test
  void squareEndUnderASeatIsToldToBeBevelled() {
    var faults = Pieces.faultsOf(SEAT + "joints:\n  - butt: {end: left.top, to: seat}\n");
    assertEquals("parts-do-not-meet", faults.getFirst().code());
    assertTrue(faults.getFirst().message().contains("10°"), faults.getFirst().message());
    assertTrue(faults.getFirst().hints().getFirst().contains("to: seat.bottom"));
  }

  @Test
  void partsThatMissSayByHowMuch() {
    var faults =
        Pieces.faultsOf(
            SEAT.replace("400 to 418", "410 to 428")
                + ENDS.replace("left.top, to: seat.bottom", "left.top, level: 400")
                + "joints:\n  - butt: {end: left.top, to: seat}\n");
    assertEquals("parts-do-not-meet", faults.getFirst().code());
    assertTrue(faults.getFirst().message().contains("10 mm short"), faults.getFirst().message());
  }

  @Test
  void pocketScrewsCannotJoinWhatLeans() {
    var faults =
        Pieces.faultsOf(
            SEAT
                + ENDS
                + "joints:\n  - pocket-screws: {end: rail.left, into: left, from: back, count: 1,"
                + " screw: pocket}\n");
    assertEquals(List.of("joint-askew"), faults.stream().map(fault -> fault.code()).toList());
  }

  @Test
  void turnsThatMakeNoSenseAreRefused() {
    assertFault("{about: y, by: 0, at: {x: 1, z: 1}}", "turn-angle");
    assertFault("{about: y, by: 90, at: {x: 1, z: 1}}", "turn-angle");
    assertFault("{about: y, by: 8, at: {x: 1}}", "turn-place");
    assertFault("{about: y, by: wide, at: {x: 1, z: 1}}", "unknown-name");
  }

  private static void assertFault(String turn, String code) {
    var faults =
        Pieces.faultsOf(
            "parts:\n  a: {stock: ash, x: 0 to 20, y: 0 to 60, z: 0 to 300, grain: z, turn: "
                + turn
                + "}\n");
    assertEquals(List.of(code), faults.stream().map(fault -> fault.code()).toList(), turn);
  }

  /** The slot lies in the middle of the seat, far from the legs that are housed at its ends. */
  @Test
  void handHoldInTheSeatTakesNoHousingAway() {
    String slot = "  - slot: {in: seat, at: {x: 250, y: 150}, along: x, length: 120, width: 30}\n";
    String dado = "joints:\n  - dado: {end: left.top, into: seat, depth: 6}\n";
    Piece piece = Pieces.of(SEAT + ENDS + slot + dado);
    assertEquals(1, piece.joints().size());
  }
}
