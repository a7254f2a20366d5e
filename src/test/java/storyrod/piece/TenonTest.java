package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Tenons in mortises; all figures are worked by hand. */
class TenonTest {
  /** A leg of 50 x 30 mm and a rail of 20 x 100 mm, 5 mm behind the leg's face. */
  private static final String FRAME =
      """
      parts:
        leg: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
        rail: {stock: ash, x: leg.right to 350, y: 5 to 25, z: 300 to 400, grain: x}
      """;

  private static String tenon(String keys) {
    return FRAME + "joints:\n  - tenon: {end: rail.left, into: leg, thickness: 7, " + keys + "}\n";
  }

  private static Cut.Tenon tenonOf(Piece piece) {
    return (Cut.Tenon) piece.part("rail").cuts().getFirst();
  }

  private static Cut.Trench mortiseOf(Piece piece) {
    return (Cut.Trench) piece.part("leg").cuts().getFirst();
  }

  /** 300 + 25 mm long; centred in 5 to 25 mm: 11.5 to 18.5; 6 mm off both edges: 306 to 394. */
  @Test
  void tenonLengthensTheRailAndLiesInTheMiddle() {
    Piece piece = Pieces.of(tenon("depth: 25, glue: yes"));
    assertEquals(Length.mm(325), piece.part("rail").finishedLength());
    Box tenon = tenonOf(piece).tenon();
    assertEquals(new Range(Length.mm(25), Length.mm(50)), tenon.x());
    assertEquals(new Range(Length.parse("11.5 mm"), Length.parse("18.5 mm")), tenon.y());
    assertEquals(new Range(Length.mm(306), Length.mm(394)), tenon.z());
  }

  @Test
  void mortiseIsAsWideAsTheTenonIsThickAndDeeperForTheGlue() {
    Piece piece = Pieces.of(tenon("depth: 25, glue: yes"));
    Cut.Trench mortise = mortiseOf(piece);
    assertEquals("mortise", mortise.term());
    assertEquals(Face.RIGHT, mortise.from());
    assertEquals(Length.parse("26.5 mm"), mortise.depth());
    assertEquals(Length.mm(7), mortise.removed().size(Axis.Y));
    assertEquals(Length.mm(88), mortise.removed().size(Axis.Z));
    assertTrue(mortise.isFor("rail"));
  }

  /**
   * Rail 300 x 20 x 100 + 25 x 7 x 88 = 615,400 mm³; leg 50 x 30 x 400 - 26.5 x 7 x 88 = 583,676.
   */
  @Test
  void solidsAreWhatTheHandWorksOut() {
    Piece piece = Pieces.of(tenon("depth: 25, glue: yes"));
    assertEquals(615_400, piece.part("rail").solid().volumeMm3(), 0.01);
    assertEquals(583_676, piece.part("leg").solid().volumeMm3(), 0.01);
    assertEquals(0, piece.part("rail").solid().sharedVolumeMm3(piece.part("leg").solid()), 0.001);
  }

  /** 3 mm behind the rail's face at y 5: 8 to 15; from the back at 25: 15 to 22. */
  @Test
  void setbackIsMeasuredFromTheFaceNamed() {
    assertEquals(
        new Range(Length.mm(8), Length.mm(15)),
        tenonOf(Pieces.of(tenon("depth: 25, setback: 3, from: front"))).tenon().y());
    assertEquals(
        new Range(Length.mm(15), Length.mm(22)),
        tenonOf(Pieces.of(tenon("depth: 25, setback: 3, from: back"))).tenon().y());
  }

  @Test
  void shouldersMayDifferAndMayBeNone() {
    assertEquals(
        new Range(Length.mm(306), Length.mm(388)),
        tenonOf(Pieces.of(tenon("depth: 25, top-shoulder: 12"))).tenon().z());
    assertEquals(
        new Range(Length.mm(300), Length.mm(400)),
        tenonOf(Pieces.of(tenon("depth: 25, shoulder: 0"))).tenon().z());
  }

  @Test
  void throughTenonIsAsLongAsTheLegIsThick() {
    Piece piece = Pieces.of(tenon("through: yes, glue: yes"));
    assertEquals(Length.mm(350), piece.part("rail").finishedLength());
    assertEquals(Length.mm(50), mortiseOf(piece).depth());
  }

  @Test
  void faultsAreTold() {
    assertCodes(List.of("tenon-depth"), tenon("glue: yes"));
    assertCodes(List.of("tenon-depth"), tenon("depth: 20, through: yes"));
    assertCodes(List.of(), tenon("depth: 48.4"));
    assertCodes(List.of("mortise-breaks-out"), tenon("depth: 48.5"));
    assertCodes(List.of("tenon-shoulders"), tenon("depth: 20, shoulder: 50"));
    assertCodes(List.of("tenon-shoulders"), tenon("depth: 20, shoulder: 0 - 1"));
    assertCodes(List.of("tenon-setback"), tenon("depth: 20, setback: 3"));
    assertCodes(List.of("tenon-setback"), tenon("depth: 20, setback: 3, from: top"));
    assertCodes(List.of("tenon-too-thick"), tenon("depth: 20, setback: 14, from: front"));
    assertCodes(
        List.of("tenon-face"),
        tenon("depth: 20")
            .replace("x: leg.right to 350", "x: 50 to 70")
            .replace("y: 5 to 25", "y: 5 to 95")
            .replace("grain: x", "grain: z"));
  }

  @Test
  void aTenonPastTheLegsTopIsAnError() {
    String high = tenon("depth: 20").replace("z: 300 to 400", "z: 310 to 410");
    assertCodes(List.of("mortise-outside"), high);
    assertCodes(List.of(), high.replace("depth: 20", "depth: 20, top-shoulder: 10"));
  }

  @Test
  void railsWithOtherTenonsHaveOtherMarks() {
    String two =
        FRAME
            + """
              far-leg: {stock: odd, x: 0 to 50, y: 200 to 230, z: 0 to 400, grain: z}
              far-rail: {stock: ash, x: leg.right to 350, y: 205 to 225, z: 300 to 400, grain: x}
            joints:
              - tenon: {end: rail.left, into: leg, depth: 25, thickness: 7}
              - tenon: {end: far-rail.left, into: far-leg, depth: 25, thickness: 7}
            """;
    Piece alike = Pieces.of(two);
    assertEquals(alike.part("rail").mark(), alike.part("far-rail").mark());
    Piece other =
        Pieces.of(
            two.replace("far-leg, depth: 25, thickness: 7", "far-leg, depth: 25, thickness: 8"));
    assertNotEquals(other.part("rail").mark(), other.part("far-rail").mark());
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
  }
}
