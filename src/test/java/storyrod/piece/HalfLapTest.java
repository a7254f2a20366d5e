package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** Half-laps at a corner and in a T, flat and on edge; all figures are worked by hand. */
class HalfLapTest {
  /** A frame that lies flat, of boards 20 mm thick: a rail of 60 mm into a stile of 50 mm. */
  private static final String FLAT =
      """
      parts:
        stile: {stock: ash, x: 0 to 50, y: 0 to 400, z: 0 to 20, grain: y}
        rail: {stock: ash, x: stile.right to 350, y: 100 to 160, z: 0 to 20, grain: x}
      joints:
        - half-lap: {end: rail.left, into: stile, glue: yes}
      """;

  private static Cut.Trench lapOf(Piece piece, String part) {
    return (Cut.Trench) piece.part(part).cuts().getFirst();
  }

  /** Rail 350 x 60 x 20 - 50 x 60 x 10 = 390,000; stile 50 x 400 x 20 - 50 x 60 x 10 = 370,000. */
  @Test
  void bothPartsLoseHalfWhereTheyMeet() {
    Piece piece = Pieces.of(FLAT);
    assertEquals(Length.mm(350), piece.part("rail").finishedLength());
    assertEquals(390_000, piece.part("rail").solid().volumeMm3(), 0.01);
    assertEquals(370_000, piece.part("stile").solid().volumeMm3(), 0.01);
    assertEquals(0, piece.part("rail").solid().sharedVolumeMm3(piece.part("stile").solid()), 0.001);
  }

  @Test
  void endLiesOnTheTopUnlessAnotherFaceIsNamed() {
    Piece top = Pieces.of(FLAT);
    assertEquals(Face.TOP, lapOf(top, "stile").from());
    assertEquals(Face.BOTTOM, lapOf(top, "rail").from());
    assertEquals(Face.BOTTOM, top.joints().getFirst().entry());
    Piece bottom = Pieces.of(FLAT.replace("glue", "face: bottom, glue"));
    assertEquals(Face.BOTTOM, lapOf(bottom, "stile").from());
    assertEquals(Face.TOP, bottom.joints().getFirst().entry());
  }

  /** At the corner the same cut is open at the stile's end, 340 to 400 mm. */
  @Test
  void cornerIsCutAtBothEnds() {
    Piece piece = Pieces.of(FLAT.replace("y: 100 to 160", "y: 340 to 400"));
    assertEquals(Length.mm(400), lapOf(piece, "stile").removed().y().to());
    assertEquals(370_000, piece.part("stile").solid().volumeMm3(), 0.01);
  }

  /**
   * On edge: a divider 100 high into another, halved in height at 50: 320 x 18 x 100 - 18 x 18 x 50
   * = 559,800 and 400 x 18 x 100 - 18 x 18 x 50 = 703,800.
   */
  @Test
  void partsOnEdgeAreHalvedInTheirWidth() {
    Piece piece =
        Pieces.of(
            """
            parts:
              long: {stock: ply18, x: 0 to 18, y: 0 to 400, z: 0 to 100, grain: y}
              short: {stock: ply18, x: long.right to 320, y: 191 to 209, z: 0 to 100, grain: x}
            joints:
              - half-lap: {end: short.left, into: long}
            """);
    assertEquals(Length.mm(50), lapOf(piece, "long").depth());
    assertEquals(559_800, piece.part("short").solid().volumeMm3(), 0.01);
    assertEquals(703_800, piece.part("long").solid().volumeMm3(), 0.01);
  }

  /** A rail 20 thick flush with the top of a post 30 thick: half of what both are is 10 mm. */
  @Test
  void thinnerPartKeepsHalfOfItself() {
    String unequal =
        FLAT.replace("stile: {stock: ash", "stile: {stock: odd")
            .replace("z: 0 to 20, grain: y", "z: 0 - 10 to 20, grain: y");
    assertEquals(Length.mm(10), lapOf(Pieces.of(unequal), "stile").depth());
    assertEquals(Length.mm(10), lapOf(Pieces.of(unequal), "rail").depth());
    Piece deeper = Pieces.of(unequal.replace("glue", "depth: 12, glue"));
    assertEquals(Length.mm(12), lapOf(deeper, "stile").depth());
    assertEquals(Length.mm(8), lapOf(deeper, "rail").depth());
  }

  @Test
  void faultsAreTold() {
    assertCodes(List.of(), FLAT.replace("glue", "depth: 19.9, glue"));
    assertCodes(List.of("lap-depth"), FLAT.replace("glue", "depth: 20, glue"));
    assertCodes(List.of("lap-face"), FLAT.replace("glue", "face: left, glue"));
    assertCodes(List.of("lap-face"), FLAT.replace("z: 0 to 20, grain: x", "z: 5 to 25, grain: x"));
    assertCodes(
        List.of(),
        FLAT.replace("z: 0 to 20, grain: x", "z: 5 to 25, grain: x")
            .replace("glue", "face: top, glue"));
    assertCodes(List.of("lap-outside"), FLAT.replace("y: 100 to 160", "y: 341 to 401"));
    assertCodes(
        List.of("joint-askew"),
        FLAT.replace(
            "z: 0 to 20, grain: x",
            "z: 0 to 20, grain: x, turn: {about: x, by: 5, at: {y: 130, z: 10}}"));
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
  }
}
