package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** Joints lengthen one part and cut the other; sizes and volumes are worked by hand. */
class PieceBuilderTest {
  /** Two sides 300 deep and 400 high, a bottom between them, 100 up. */
  private static final String SIDES =
      """
      parts:
        left-side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 400, grain: z}
        right-side: {stock: ply18, x: 582 to 600, y: 0 to 300, z: 0 to 400, grain: z}
        bottom: {stock: ply18, x: left-side.right to right-side.left, y: 0 to 300, z: 100 to 118, grain: x}
      """;

  @Test
  void dadoLengthensTheEndAndCutsTheSide() {
    Piece piece =
        Pieces.of(
            SIDES
                + """
                joints:
                  - dado: {end: bottom.left, into: left-side, depth: 6, glue: yes}
                  - dado: {end: bottom.right, into: right-side, depth: 6, glue: yes}
                """);
    assertEquals(Length.mm(564 + 12), piece.part("bottom").finishedLength());
    assertEquals(Length.mm(564), piece.part("bottom").shoulder().size(Axis.X));
    Cut.Trench dado = (Cut.Trench) piece.part("left-side").cuts().getFirst();
    assertEquals(Face.RIGHT, dado.from());
    assertEquals(Length.mm(6), dado.depth());
    assertEquals(Length.mm(18), dado.removed().size(Axis.Z));
    assertEquals(Length.mm(300), dado.removed().size(Axis.Y));
  }

  /**
   * Sides 2 x (18 x 300 x 400 - 6 x 300 x 18) = 2 x (2,160,000 - 32,400) = 4,255,200 mm³; bottom
   * 576 x 300 x 18 = 3,110,400 mm³; together 7,365,600 mm³, worked by hand.
   */
  @Test
  void volumeOfASmallPieceIsWhatTheHandWorksOut() {
    Piece piece =
        Pieces.of(
            SIDES
                + """
                joints:
                  - dado: {end: bottom.left, into: left-side, depth: 6, glue: yes}
                  - dado: {end: bottom.right, into: right-side, depth: 6, glue: yes}
                """);
    double total = piece.parts().stream().mapToDouble(part -> part.solid().volumeMm3()).sum();
    assertEquals(7_365_600, total, 0.01);
  }

  /** 18 x 300 x 400 less 3 holes of 5 mm, 10 deep: 2,160,000 - 3 x π x 2.5² x 10 = 2,159,410.95. */
  @Test
  void holesTakeTheirCylinders() {
    Piece piece =
        Pieces.of(
            SIDES
                + """
                cuts:
                  - holes: {in: left-side.right, at: {y: 50, z: 200}, along: z, step: 32, count: 3, diameter: 5, depth: 10, for: pin}
                """);
    assertEquals(
        2_160_000 - 3 * Math.PI * 6.25 * 10, piece.part("left-side").solid().volumeMm3(), 0.01);
  }

  @Test
  void mirrorImagesShareAMark() {
    Piece piece =
        Pieces.of(
            SIDES
                + """
                cuts:
                  - holes: {in: [left-side.right, right-side.left], at: {y: 50, z: 200}, along: z, step: 32, count: 3, diameter: 5, depth: 10}
                """);
    Mark sides = piece.marks().getFirst();
    assertEquals("A", sides.mark());
    assertEquals("Side", sides.title());
    assertEquals(1, sides.same());
    assertEquals(1, sides.mirrored());
    assertTrue(piece.part("right-side").mirrored());
  }

  @Test
  void partsThatOnlyNeedTurningAreTheSame() {
    Piece piece =
        Pieces.of(
            SIDES
                + """
                cuts:
                  - holes: {in: left-side.right, at: {y: 50, z: 100}, diameter: 5, depth: 10}
                  - holes: {in: right-side.left, at: {y: 250, z: 100}, diameter: 5, depth: 10}
                """);
    assertEquals(2, piece.marks().getFirst().same());
  }

  @Test
  void aHoleElsewhereMakesAnotherPart() {
    Piece piece =
        Pieces.of(
            SIDES
                + """
                cuts:
                  - holes: {in: left-side.right, at: {y: 50, z: 100}, diameter: 5, depth: 10}
                """);
    assertEquals(List.of("A", "B", "C"), piece.marks().stream().map(Mark::mark).toList());
  }

  @Test
  void rabbetAtTheEdgeIsFineAndInsideIsNot() {
    String rabbet = "joints:\n  - rabbet: {end: bottom.left, into: left-side, depth: 6}\n";
    assertCodes(List.of("rabbet-inside"), Pieces.faultsOf(SIDES + rabbet));
    String atTheEdge = SIDES.replace("100 to 118", "0 to 18");
    assertCodes(List.of(), Pieces.faultsOf(atTheEdge + rabbet));
    assertCodes(
        List.of("slot-at-edge"), Pieces.faultsOf(atTheEdge + rabbet.replace("rabbet", "dado")));
  }

  @Test
  void partsThatDoNotMeetAreTold() {
    List<Diagnostic> faults =
        Pieces.faultsOf(
            SIDES.replace("left-side.right to", "left-side.right + 2 to")
                + "joints:\n  - dado: {end: bottom.left, into: left-side, depth: 6}\n");
    assertCodes(List.of("parts-do-not-meet"), faults);
    assertTrue(
        faults.getFirst().message().contains("2 mm short of it"), faults.getFirst().message());
    assertEquals(2, faults.getFirst().also().size());
  }

  @Test
  void dadoDeeperThanTheBoardIsAnError() {
    assertCodes(
        List.of("cut-too-deep"),
        Pieces.faultsOf(
            SIDES + "joints:\n  - dado: {end: bottom.left, into: left-side, depth: 18}\n"));
  }

  @Test
  void holeOutsideThePartIsAnError() {
    assertCodes(
        List.of("hole-outside"),
        Pieces.faultsOf(
            SIDES
                + """
                cuts:
                  - holes: {in: left-side.right, at: {y: 50, z: 380}, along: z, step: 32, count: 3, diameter: 5, depth: 10}
                """));
  }

  /** A 40 mm screw through 18 mm of sheet reaches 22 mm; the rail is 30 mm high there. */
  @Test
  void screwsDrillAClearanceHoleAndAPilotHole() {
    Piece piece = Pieces.of(SIDES + RAIL + SCREWS);
    Cut.Holes clearance = (Cut.Holes) piece.part("bottom").cuts().getFirst();
    Cut.Holes pilot = (Cut.Holes) piece.part("rail").cuts().getFirst();
    assertTrue(clearance.through());
    assertEquals(Length.inch(11, 64), clearance.diameter());
    assertEquals(Length.inch(7, 64), pilot.diameter());
    assertEquals(Length.mm(22), pilot.depth());
    assertEquals(Face.BOTTOM, pilot.from());
    assertEquals(
        List.of(Length.mm(150), Length.mm(250)), pilot.centres().stream().map(p -> p.x()).toList());
  }

  /** A 40 mm screw through 18 mm of side, of which the dado takes 6, reaches 28 into the bottom. */
  @Test
  void pilotHoleInAHousedEndStartsAtThatEnd() {
    Piece piece =
        Pieces.of(
            SIDES
                + """
                joints:
                  - dado: {end: bottom.left, into: left-side, depth: 6}
                  - screws: {through: left-side.left, into: bottom, count: 2, screw: screw}
                """);
    Cut.Holes pilot = (Cut.Holes) piece.part("bottom").cuts().getFirst();
    assertEquals(Length.mm(28), pilot.depth());
    assertEquals(Length.mm(12), pilot.centres().getFirst().x());
  }

  /** Two 4 mm shanks: a flat head is about 2 x shank wide (head column of the screw chart). */
  @Test
  void screwsAreCountersunkUnlessTheMakerSaysNo() {
    assertEquals(Length.mm(8), clearance(SCREWS).countersink());
    assertEquals(
        Length.ZERO,
        clearance(SCREWS.replace("count: 2", "count: 2, countersink: no")).countersink());
    assertEquals(
        Length.ZERO, clearance(SCREWS.replace("screw: screw", "screw: pocket")).countersink());
  }

  private static Cut.Holes clearance(String screws) {
    return (Cut.Holes) Pieces.of(SIDES + RAIL + screws).part("bottom").cuts().getFirst();
  }

  @Test
  void aSunkAndAPlainHoleMakePartsOfTwoMarks() {
    String two =
        """
        parts:
          one: {stock: ash, x: 0 to 300, y: 0 to 60, z: 0 to 20, grain: x}
          two: {stock: ash, x: 0 to 300, y: 100 to 160, z: 0 to 20, grain: x}
          under-one: {stock: odd, x: 0 to 300, y: 0 to 60, z: 0 - 30 to 0, grain: x}
          under-two: {stock: odd, x: 0 to 300, y: 100 to 160, z: 0 - 30 to 0, grain: x}
        joints:
          - screws: {through: one.top, into: under-one, count: 2, screw: screw}
          - screws: {through: two.top, into: under-two, count: 2, screw: screw}
        """;
    Piece alike = Pieces.of(two);
    assertEquals(alike.part("one").mark(), alike.part("two").mark());
    Piece different =
        Pieces.of(two.replace("under-two, count: 2", "under-two, count: 2, countersink: no"));
    assertNotEquals(different.part("one").mark(), different.part("two").mark());
  }

  @Test
  void screwThatBreaksThroughIsAnError() {
    assertCodes(
        List.of("screw-breaks-through"),
        Pieces.faultsOf(
            SIDES
                + RAIL.replace("y: 0 to 20, z: 118 to 148", "y: 0 to 30, z: 118 to 138")
                + SCREWS));
  }

  @Test
  void pocketHolesLeaveTheEndAtTheMiddleOfTheThickness() {
    Piece piece =
        Pieces.of(
            SIDES
                + """
                joints:
                  - pocket-screws: {end: bottom.left, into: left-side, from: bottom, count: 2, screw: pocket}
                """);
    PocketHoles pockets = (PocketHoles) piece.part("bottom").cuts().getFirst();
    assertEquals(
        List.of(Length.mm(109), Length.mm(109)),
        pockets.centres().stream().map(p -> p.z()).toList());
    assertEquals(
        List.of(Length.mm(75), Length.mm(225)),
        pockets.centres().stream().map(p -> p.y()).toList());
    assertTrue(piece.part("bottom").solid().volumeMm3() < 564 * 300 * 18);
  }

  @Test
  void topFastenersGetASlotBelowTheTop() {
    Piece piece =
        Pieces.of(
            SIDES
                + RAIL
                + """
                  top: {stock: ash, x: 0 to 600, y: 0 to 300, z: rail.top to rail.top + 20, grain: x}
                joints:
                  - fastened-top: {top: top.bottom, rail: rail.back, slot-from-top: 10, fastener: clip, screw: screw, count: 2}
                """);
    Cut.Trench slot = (Cut.Trench) piece.part("rail").cuts().getFirst();
    assertEquals(Length.mm(148 - 10), slot.removed().z().to());
    assertEquals(Length.inch(1, 8), slot.removed().size(Axis.Z));
    assertEquals(Length.mm(200), slot.removed().size(Axis.X));
    assertEquals(2, piece.joints().getFirst().fasteners().getFirst().count());
  }

  @Test
  void notchAtTheEdgeAndCutoutInTheMiddleEachHaveTheirPlace() {
    String notch = "cuts:\n  - notch: {in: left-side, y: 0 to 50, z: 0 to 80}\n";
    Piece piece = Pieces.of(SIDES + notch);
    assertEquals(2_160_000 - 18 * 50 * 80, piece.part("left-side").solid().volumeMm3(), 0.01);
    assertCodes(List.of("cut-place"), Pieces.faultsOf(SIDES + notch.replace("notch", "cutout")));
    assertCodes(
        List.of(),
        Pieces.faultsOf(SIDES + "cuts:\n  - cutout: {in: left-side, y: 50 to 90, z: 20 to 80}\n"));
  }

  private static final String RAIL =
      "  rail: {stock: ash, x: 100 to 300, y: 0 to 20, z: 118 to 148, grain: x}\n";
  private static final String SCREWS =
      "joints:\n  - screws: {through: bottom.bottom, into: rail, count: 2, screw: screw}\n";

  private static void assertCodes(List<String> codes, List<Diagnostic> faults) {
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
  }
}
