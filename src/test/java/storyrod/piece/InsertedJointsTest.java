package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.check.Checks;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/** Dowels, biscuits and loose tenons; all figures are worked by hand. */
class InsertedJointsTest {
  /** What facets leave of an arc that is drawn to 0.01 mm, in mm³. */
  private static final double FACETS = 5;

  /** A leg of 50 x 30 mm and a rail of 20 x 100 mm whose end meets its right face. */
  private static final String FRAME =
      """
        dowel: {kind: dowel, length: 40, diameter: 8}
        oval: {kind: biscuit, length: 56, width: 23, thickness: 4, slot-depth: 12}
        strip: {kind: loose-tenon, length: 50, width: 30, thickness: 7}
      parts:
        leg: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
        rail: {stock: ash, x: leg.right + %s to 350, y: 5 to 25, z: 300 to 400, grain: x}
      """;

  private static String joint(String text) {
    return FRAME.formatted("0") + "joints:\n  - " + text + "\n";
  }

  private static Cut cutOf(Piece piece, String part) {
    return piece.part(part).cuts().getFirst();
  }

  /** Two shares of 50 mm: middles at 325 and 375; 20 + 1.5 mm deep in each part. */
  @Test
  void dowelsHaveHolesOppositeEachOtherInBothParts() {
    Piece piece = Pieces.of(joint("dowels: {end: rail.left, into: leg, dowel: dowel, count: 2}"));
    Cut.Holes inRail = (Cut.Holes) cutOf(piece, "rail");
    Cut.Holes inLeg = (Cut.Holes) cutOf(piece, "leg");
    assertEquals(Face.LEFT, inRail.from());
    assertEquals(Face.RIGHT, inLeg.from());
    assertEquals(inRail.centres(), inLeg.centres());
    assertEquals(List.of(at(50, 15, 325), at(50, 15, 375)), inLeg.centres());
    assertEquals(Length.parse("21.5 mm"), inRail.depth());
    assertEquals(Length.parse("21.5 mm"), inLeg.depth());
    assertEquals(Length.mm(8), inLeg.diameter());
    assertEquals(List.of(new Joint.ItemCount("dowel", 2)), piece.joints().getFirst().fasteners());
  }

  private static Point at(long x, long y, long z) {
    return new Point(Length.mm(x), Length.mm(y), Length.mm(z));
  }

  /** 300 x 20 x 100 - 2 pi 16 21.5 = 597,838.6; 50 x 30 x 400 - the same = 597,838.6. */
  @Test
  void dowelHolesTakeWhatTheHandWorksOut() {
    Piece piece = Pieces.of(joint("dowels: {end: rail.left, into: leg, dowel: dowel, count: 2}"));
    double bored = 2 * Math.PI * 16 * 21.5;
    assertEquals(600_000 - bored, piece.part("rail").solid().volumeMm3(), 0.01);
    assertEquals(600_000 - bored, piece.part("leg").solid().volumeMm3(), 0.01);
  }

  /** 40 mm at 30 mm spacing round the middle, 350: 335 and 365; 12 in the leg leaves 28. */
  @Test
  void spacingAndDepthAreAsSaid() {
    Piece piece =
        Pieces.of(
            joint(
                "dowels: {end: rail.left, into: leg, dowel: dowel, count: 2, spacing: 30,"
                    + " depth-into: 12, room: 2}"));
    Cut.Holes inLeg = (Cut.Holes) cutOf(piece, "leg");
    assertEquals(Length.mm(335), inLeg.first().on(Axis.Z));
    assertEquals(Length.mm(30), inLeg.step());
    assertEquals(Length.mm(14), inLeg.depth());
    assertEquals(Length.mm(30), ((Cut.Holes) cutOf(piece, "rail")).depth());
  }

  /** 100 mm at a spacing of 30: three, and 20 mm left at both ends. */
  @Test
  void spacingAloneTellsTheNumber() {
    Piece piece =
        Pieces.of(joint("dowels: {end: rail.left, into: leg, dowel: dowel, spacing: 30}"));
    Cut.Holes inLeg = (Cut.Holes) cutOf(piece, "leg");
    assertEquals(3, inLeg.count());
    assertEquals(Length.mm(320), inLeg.first().on(Axis.Z));
  }

  /** A disc of 100 mm, 12 mm deep, leaves 2 sqrt(12 x 88) = 64.99 mm. */
  @Test
  void biscuitSlotIsAsLongAsTheDiscLeavesIt() {
    Slots slot =
        (Slots)
            cutOf(
                Pieces.of(joint("biscuits: {end: rail.left, into: leg, biscuit: oval, count: 1}")),
                "leg");
    assertEquals(64.992, slot.length().toMm(), 0.001);
    assertEquals(Length.mm(12), slot.depth());
    assertEquals(Length.mm(4), slot.width());
    assertEquals(Axis.Z, slot.along());
  }

  /**
   * The segment under the chord of 64.992 mm in a circle of 50 mm: r² acos(38 / 50) - 38 x 32.496 =
   * 2500 x 0.70748 - 1234.85 = 533.86 mm², 4 mm wide. Facets of the arc take a little less.
   */
  @Test
  void biscuitSlotTakesTheSegmentOfItsDisc() {
    Piece piece =
        Pieces.of(joint("biscuits: {end: rail.left, into: leg, biscuit: oval, count: 1}"));
    double taken = 4 * (2500 * Math.acos(0.76) - 38 * Math.sqrt(12 * 88.0));
    assertEquals(600_000 - taken, fine(piece.part("leg")), FACETS);
    assertEquals(600_000 - taken, fine(piece.part("rail")), FACETS);
  }

  private static double fine(Part part) {
    return Carving.of(part.box(), part.cuts(), Fineness.DRAWN).volumeMm3();
  }

  /** 23 x 7 mm and a circle of 7 mm, 25 + 1.5 mm deep in each part. */
  @Test
  void looseTenonHasMortisesWithRoundEnds() {
    Piece piece =
        Pieces.of(joint("loose-tenon: {end: rail.left, into: leg, tenon: strip, count: 1}"));
    Slots mortise = (Slots) cutOf(piece, "leg");
    assertEquals(Length.mm(30), mortise.length());
    assertEquals(Length.mm(7), mortise.width());
    assertEquals(Length.parse("26.5 mm"), mortise.depth());
    double taken = 26.5 * (23 * 7 + Math.PI * 3.5 * 3.5);
    assertEquals(600_000 - taken, fine(piece.part("leg")), FACETS);
    assertEquals(600_000 - taken, fine(piece.part("rail")), FACETS);
    assertEquals(mortise.centres(), ((Slots) cutOf(piece, "rail")).centres());
  }

  /** Turned about, the same parts have the same mark: a row of slots counts one by one. */
  @Test
  void equalPartsWithSlotsShareAMark() {
    Piece piece =
        Pieces.of(
            joint(
                    """
                loose-tenon: {end: rail.left, into: leg, tenon: strip, count: 2}
                  - loose-tenon: {end: rail.right, into: other, tenon: strip, count: 2}
                """)
                .replace(
                    "  rail:",
                    "  other: {stock: odd, x: 350 to 400, y: 0 to 30, z: 0 to 400, grain: z}\n"
                        + "  rail:"));
    assertEquals(piece.part("leg").mark(), piece.part("other").mark());
  }

  /** Whatever the numbers, holes of both parts face each other and hold what lies in them. */
  @Test
  void randomDowelsFitTheirHolesAndNoGapIsOverlooked() {
    Random random = new Random(20261126);
    for (int i = 0; i < 60; i++) {
      int count = 1 + random.nextInt(4);
      String into = RandomJoints.mm(random, 5, 35);
      String text =
          joint(
              "dowels: {end: rail.left, into: leg, dowel: dowel, count: %d, depth-into: %s, glue: yes}"
                  .formatted(count, into));
      Piece piece = Pieces.of(text);
      Cut.Holes inRail = (Cut.Holes) cutOf(piece, "rail");
      Cut.Holes inLeg = (Cut.Holes) cutOf(piece, "leg");
      assertEquals(inRail.centres(), inLeg.centres(), text);
      assertEquals(Length.mm(43), inRail.depth().plus(inLeg.depth()), text);
      assertTrue(inLeg.depth().isShorterThan(Length.mm(50)), text);
      assertTrue(found(piece).stream().noneMatch(Diagnostic::isError), text);
      String gap = RandomJoints.mm(random, 0.1, 3);
      String wrong = text.replace("leg.right + 0", "leg.right + " + gap);
      assertTrue(Pieces.faultsOf(wrong).stream().anyMatch(Diagnostic::isError), wrong);
    }
  }

  private static List<Diagnostic> found(Piece piece) {
    Diagnostics found = new Diagnostics();
    Checks.run(piece, found);
    return found.sorted();
  }
}
