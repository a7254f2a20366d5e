package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** Parts that cross, flat and on edge; all figures are worked by hand. */
class CrossLapTest {
  /** Two boards of 20 mm, 50 and 60 wide, that lie flat and cross. */
  private static final String FLAT =
      """
      parts:
        lower: {stock: ash, x: 0 to 400, y: 100 to 150, z: 0 to 20, grain: x}
        upper: {stock: ash, x: 200 to 260, y: 0 to 300, z: 0 to 20, grain: y}
      joints:
        - cross-lap: {end: upper.bottom, into: lower, glue: yes}
      """;

  private static final String ON_EDGE =
      """
      parts:
        long: {stock: ply18, x: 0 to 400, y: 100 to 118, z: 0 to 90, grain: x}
        divider: {stock: ply18, x: 200 to 218, y: 0 to 300, z: 0 to 70, grain: y}
      joints:
        - cross-lap: {end: divider.bottom, into: long}
      """;

  private static Cut.Trench notch(Piece piece, String part) {
    return (Cut.Trench) piece.part(part).cuts().getFirst();
  }

  /** 400 x 50 x 20 - 60 x 50 x 10 = 370,000; 300 x 60 x 20 - 60 x 50 x 10 = 330,000. */
  @Test
  void bothLoseHalfOfTheirThickness() {
    Piece piece = Pieces.of(FLAT);
    assertEquals(370_000, piece.part("lower").solid().volumeMm3(), 0.01);
    assertEquals(330_000, piece.part("upper").solid().volumeMm3(), 0.01);
    assertEquals(
        0, piece.part("lower").solid().sharedVolumeMm3(piece.part("upper").solid()), 0.001);
    assertEquals(Face.TOP, notch(piece, "lower").from());
    assertEquals(Face.BOTTOM, notch(piece, "upper").from());
  }

  /**
   * Both stand on the floor: half of the lower one's 70 is 35, so the higher is notched 90 - 35 =
   * 55: 400 x 18 x 90 - 18 x 18 x 55 = 630,180; 300 x 18 x 70 - 18 x 18 x 35 = 366,660.
   */
  @Test
  void partsOnEdgeOfDifferentHeightsMeetInTheMiddleOfTheLowerOne() {
    Piece piece = Pieces.of(ON_EDGE);
    assertEquals(Length.mm(55), notch(piece, "long").depth());
    assertEquals(Length.mm(35), notch(piece, "divider").depth());
    assertEquals(630_180, piece.part("long").solid().volumeMm3(), 0.01);
    assertEquals(366_660, piece.part("divider").solid().volumeMm3(), 0.01);
  }

  @Test
  void partsKeepTheLengthTheyAreDescribedWith() {
    Piece piece = Pieces.of(FLAT);
    assertEquals(Length.mm(400), piece.part("lower").finishedLength());
    assertEquals(Face.BOTTOM, piece.joints().getFirst().entry());
    assertEquals(Length.mm(10), piece.joints().getFirst().contact().z().from());
    assertEquals(Length.ZERO, piece.joints().getFirst().contact().z().length());
  }

  @Test
  void faultsAreTold() {
    assertCodes(List.of("parts-do-not-cross"), FLAT.replace("y: 0 to 300", "y: 100 to 300"));
    assertCodes(List.of("parts-do-not-cross"), FLAT.replace("y: 0 to 300", "y: 150 to 300"));
    assertCodes(List.of(), FLAT.replace("y: 0 to 300", "y: 99 to 300"));
    assertCodes(List.of("parts-do-not-cross"), FLAT.replace("upper.bottom", "upper.left"));
    assertCodes(List.of("lap-depth"), FLAT.replace("glue", "depth: 20, glue"));
    assertCodes(List.of("lap-depth"), ON_EDGE.replace("into: long", "into: long, depth: 20"));
    assertCodes(
        List.of("joint-askew"),
        FLAT.replace("grain: y}", "grain: y, turn: {about: z, by: 5, at: {x: 230, y: 125}}}"));
    assertCodes(
        List.of("joint-askew"),
        FLAT + "cuts:\n  - taper: {end: upper.back, faces: left, from: 100, off: 20}\n");
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
  }
}
