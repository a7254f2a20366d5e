package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** Volumes and lengths of slanted parts against trigonometry worked by hand beside each test. */
class SlantedCutsTest {
  private static final String LEG =
      """
      parts:
        leg: {stock: ash, x: 0 to 40, y: 0 to 20, z: 0 to 600, grain: z}
      cuts:
      """;

  /** 40 x 20 x 600 less a wedge of 10 x 500 / 2 over 20: 480,000 - 50,000 mm³. */
  @Test
  void taperTakesAWedgeOffTheNamedFace() {
    Part leg =
        Pieces.of(LEG + "  - taper: {end: leg.bottom, faces: right, from: leg.top - 100, off: 10}")
            .part("leg");
    assertEquals(430_000, leg.solid().volumeMm3(), 0.01);
    Slanted.Slope taper = (Slanted.Slope) leg.cuts().getFirst();
    assertEquals(Length.mm(500), taper.run());
    assertEquals(Length.mm(10), taper.drop());
    assertEquals(Length.mm(600), leg.finishedLength());
  }

  /**
   * Tapered on all four sides from 40 x 20 to 28 x 8 over 300: the lower half is a prismatoid, h/6
   * (A1 + 4 Am + A2) = 300/6 (800 + 4 x 34 x 14 + 224) = 146,400; the upper half 240,000 mm³.
   */
  @Test
  void taperOnFourSidesIsAPrismatoid() {
    Part leg =
        Pieces.of(
                LEG
                    + "  - taper: {end: leg.bottom, faces: [left, right, front, back], from: 300,"
                    + " off: 6}")
            .part("leg");
    assertEquals(386_400, leg.solid().volumeMm3(), 0.01);
  }

  /** 20 tan 8° = 20 x 0.140541 = 2.8108 mm; the wedge takes half of that over 20 x 40. */
  @Test
  void bevelSlantsOverTheThickness() {
    Part leg = Pieces.of(LEG + "  - bevel: {end: leg.top, by: 8, long: front}").part("leg");
    Slanted.Slope bevel = (Slanted.Slope) leg.cuts().getFirst();
    assertEquals(2.8108, bevel.drop().toMm(), 1e-4);
    assertEquals(480_000 - 2.81082 * 20 / 2 * 40, leg.solid().volumeMm3(), 0.05);
    assertEquals("8°", bevel.angle().toString());
    assertEquals(Face.BACK, bevel.towards());
  }

  /**
   * A leg that leans by 10° and stands level gets longer at the floor by 20 tan 10° = 3.5265 mm,
   * and an outline drawn down to the floor goes with it.
   */
  @Test
  void outlineGoesWithASlantedEnd() {
    String leg =
        """
        parts:
          leg:
            stock: ash
            x: 0 to 20
            y: 0 to 200
            z: 0 to 300
            grain: z
            turn: {about: y, by: 10, at: {x: leg.right, z: leg.bottom}}
            outline:
              - path: {points: [{y: 0, z: 0}, {y: 200, z: 0}, {y: 150, z: 300}, {y: 50, z: 300}]}
        cuts:
          - bevel: {end: leg.bottom, level: 0}
        """;
    Part made = Pieces.of(leg).part("leg");
    assertEquals(-3.5265, made.box().z().from().toMm(), 1e-3);
    Cut.Shaped outline =
        made.cuts().stream()
            .filter(Cut.Shaped.class::isInstance)
            .map(Cut.Shaped.class::cast)
            .findFirst()
            .orElseThrow();
    assertEquals(made.box().z(), outline.contour().extent(Axis.Z));
  }

  /** A mitre of 45° takes as much off the length as the part is wide: 40 x 40 / 2 x 20. */
  @Test
  void mitreSlantsOverTheWidth() {
    Part leg = Pieces.of(LEG + "  - mitre: {end: leg.top, by: 45 deg, long: left}").part("leg");
    assertEquals(480_000 - 16_000, leg.solid().volumeMm3(), 0.05);
  }

  /** Two chamfers of 2 along 600 and one along 20 that meets neither: 2 x 2 / 2 each. */
  @Test
  void chamfersTakeOffEdges() {
    Part leg =
        Pieces.of(LEG + "  - chamfer: {in: leg, edges: [left-front, back-right], size: 2}")
            .part("leg");
    assertEquals(480_000 - 2 * 2 * 600, leg.solid().volumeMm3(), 0.01);
  }

  @Test
  void legsTaperedOnTwoInnerFacesAreOnePart() {
    Piece piece =
        Pieces.of(
            """
            parts:
              a: {stock: odd, x: 0 to 30, y: 0 to 30, z: 0 to 600, grain: z}
              b: {stock: odd, x: 400 to 430, y: 0 to 30, z: 0 to 600, grain: z}
              c: {stock: odd, x: 0 to 30, y: 300 to 330, z: 0 to 600, grain: z}
            cuts:
              - taper: {end: a.bottom, faces: [right, back], from: 500, off: 9}
              - taper: {end: b.bottom, faces: [left, back], from: 500, off: 9}
              - taper: {end: c.bottom, faces: [right, front], from: 500, off: 9}
            """);
    assertEquals(1, piece.marks().size());
    assertEquals(3, piece.marks().getFirst().same());
  }

  @Test
  void partsThatSlantOppositeWaysAreAHandedPair() {
    Piece piece =
        Pieces.of(
            """
            parts:
              a: {stock: ash, x: 0 to 60, y: 0 to 20, z: 0 to 300, grain: z}
              b: {stock: ash, x: 100 to 160, y: 0 to 20, z: 0 to 300, grain: z}
            cuts:
              - mitre: {end: a.top, by: 20, long: left}
              - mitre: {end: b.top, by: 20, long: right}
              - holes: {in: [a.front], at: {x: 10, z: 50}, diameter: 8, depth: 10}
              - holes: {in: [b.front], at: {x: 150, z: 50}, diameter: 8, depth: 10}
            """);
    Mark mark = piece.marks().getFirst();
    assertEquals(List.of(1, 1), List.of(mark.same(), mark.mirrored()));
  }

  @Test
  void everyMistakeHasItsOwnWords() {
    assertFault("taper: {end: leg.left, faces: front, from: 300, off: 5}", "taper-end");
    assertFault("taper: {end: leg.top, faces: bottom, from: 300, off: 5}", "taper-face");
    assertFault("taper: {end: leg.top, faces: [left, left], from: 300, off: 5}", "taper-face");
    assertFault("taper: {end: leg.top, faces: left, from: 700, off: 5}", "taper-start");
    assertFault("taper: {end: leg.top, faces: left, from: 600, off: 5}", "taper-start");
    assertFault("taper: {end: leg.top, faces: left, from: 300, off: 40}", "taper-off");
    assertFault("taper: {end: leg.top, faces: [left, right], from: 300, off: 20}", "taper-off");
    assertFault("bevel: {end: leg.front, by: 8, long: left}", "slope-end");
    assertFault("bevel: {end: leg.top, by: 0, long: front}", "slope-angle");
    assertFault("bevel: {end: leg.top, by: 90, long: front}", "slope-angle");
    assertFault("bevel: {end: leg.top, by: -8, long: front}", "slope-angle");
    assertFault("bevel: {end: leg.top, by: 400, long: front}", "angle");
    assertFault("bevel: {end: leg.top, by: 8}", "slope-long");
    assertFault("bevel: {end: leg.top, by: 8, long: left}", "slope-side");
    assertFault("bevel: {end: leg.top}", "slope-how");
    assertFault("bevel: {end: leg.top, by: 8, long: front, level: 0}", "slope-how");
    assertFault("bevel: {end: leg.top, level: 600}", "slope-square");
    assertFault("mitre: {end: leg.top, by: 89, long: left}", "slope-steep");
    assertFault("chamfer: {in: leg, edges: left-front, size: 20}", "chamfer-size");
    assertFault("chamfer: {in: leg, edges: left-right, size: 2}", "edge");
  }

  private static void assertFault(String cut, String code) {
    var faults = Pieces.faultsOf(LEG + "  - " + cut);
    assertEquals(List.of(code), faults.stream().map(fault -> fault.code()).toList(), cut);
    assertTrue(faults.getFirst().hints().stream().anyMatch(hint -> !hint.isBlank()), cut);
  }
}
