package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** Bridles at a corner and in a T; all figures are worked by hand. */
class BridleTest {
  /** A leg of 30 x 60 mm whose top goes astride a rail of 30 x 90. */
  private static final String FRAME =
      """
      parts:
        rail: {stock: odd, x: 0 to 600, y: 0 to 30, z: 400 to 490, grain: x}
        leg: {stock: odd, x: 200 to 260, y: 0 to 30, z: 0 to rail.bottom, grain: z}
      joints:
        - bridle: {end: leg.top, into: rail, glue: yes}
      """;

  /**
   * A third of 30 is 10. Leg 60 x 30 x 490 - 60 x 10 x 90 = 828,000; rail 600 x 30 x 90 - 2 x (60 x
   * 10 x 90) = 1,512,000.
   */
  @Test
  void legIsOpenInTheMiddleAndTheRailThinnedOnBothSides() {
    Piece piece = Pieces.of(FRAME);
    assertEquals(Length.mm(490), piece.part("leg").finishedLength());
    assertEquals(828_000, piece.part("leg").solid().volumeMm3(), 0.01);
    assertEquals(1_512_000, piece.part("rail").solid().volumeMm3(), 0.01);
    assertEquals(0, piece.part("leg").solid().sharedVolumeMm3(piece.part("rail").solid()), 0.001);
    assertEquals(
        List.of(Face.BACK, Face.FRONT), piece.part("rail").cuts().stream().map(Cut::from).toList());
    assertEquals(Face.TOP, piece.part("leg").cuts().getFirst().from());
  }

  @Test
  void thicknessMayBeGivenAndACornerIsTheSameAtTheEnd() {
    Piece piece =
        Pieces.of(FRAME.replace("glue", "thickness: 12, glue").replace("200 to 260", "540 to 600"));
    assertEquals(60 * 490 * 30 - 60 * 12 * 90, piece.part("leg").solid().volumeMm3(), 0.01);
    assertEquals(600 * 90 * 30 - 60 * 18 * 90, piece.part("rail").solid().volumeMm3(), 0.01);
    assertEquals(
        Length.mm(600), ((Cut.Trench) piece.part("rail").cuts().getFirst()).removed().x().to());
  }

  /** A leg 20 thick in the middle of a rail 30 thick: a third of 20, from 11.667 to 18.333. */
  @Test
  void unequalPartsShareTheTongueOfTheThinnerOne() {
    Piece piece =
        Pieces.of(
            FRAME.replace(
                "leg: {stock: odd, x: 200 to 260, y: 0 to 30",
                "leg: {stock: ash, x: 200 to 260, y: 5 to 25"));
    Cut.Trench open = (Cut.Trench) piece.part("leg").cuts().getFirst();
    assertEquals(6667, open.removed().y().length().toMicrometres());
    assertEquals(11_667, open.removed().y().from().toMicrometres());
  }

  /** A third of 20 mm is no whole number of ticks; a leg turned end for end is the same part. */
  @Test
  void bothCheeksAreEqualWhereAThirdIsRounded() {
    Piece piece = Pieces.of(FRAME.replace("odd", "ash").replace("y: 0 to 30", "y: 0 to 20"));
    List<Cut> cheeks = piece.part("rail").cuts();
    assertEquals(2, cheeks.size());
    assertEquals(((Cut.Trench) cheeks.getFirst()).depth(), ((Cut.Trench) cheeks.getLast()).depth());
  }

  @Test
  void faultsAreTold() {
    assertCodes(List.of("bridle-too-thick"), FRAME.replace("glue", "thickness: 30, glue"));
    assertCodes(List.of(), FRAME.replace("glue", "thickness: 29.9, glue"));
    assertCodes(
        List.of("bridle-in-line"),
        FRAME.replace("end: leg.top, into: rail", "end: rail.bottom, into: leg"));
    assertCodes(List.of("lap-outside"), FRAME.replace("200 to 260", "541 to 601"));
    assertCodes(
        List.of("joint-askew"),
        FRAME.replace("grain: z}", "grain: z, turn: {about: z, by: 5, at: {x: 230, y: 15}}}"));
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
  }
}
