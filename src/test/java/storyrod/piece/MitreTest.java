package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;

/** Mitres of frames and cases, plain and splined; all figures are worked by hand. */
public class MitreTest {
  /** A frame's corner of parts 50 wide and 20 thick. */
  public static final String FRAME =
      """
      parts:
        stile: {stock: ash, x: 0 to 50, y: 0 to 20, z: 0 to 400, grain: z}
        rail: {stock: ash, x: stile.right to 300, y: 0 to 20, z: 350 to 400, grain: x}
      joints:
        - mitre: {end: rail.left, into: stile, glue: yes}
      """;

  /** A case's corner of parts 20 thick and 60 wide. */
  public static final String CASE =
      """
      parts:
        side: {stock: ash, x: 0 to 20, y: 0 to 200, z: 0 to 60, grain: y}
        front: {stock: ash, x: side.right to 300, y: 0 to 20, z: 0 to 60, grain: x}
      joints:
        - mitre: {end: front.left, into: side, glue: yes}
      """;

  public static String splined(String body) {
    return body.replace("glue", "spline: pin, thickness: 6, depth: 8, glue");
  }

  private static double volume(Piece piece, String part) {
    return piece.part(part).solid().volumeMm3();
  }

  /** 300 x 50 x 20 less 50 x 50/2 x 20 = 275,000; 400 x 50 x 20 less the same = 375,000. */
  @Test
  void frameIsMitredOverTheWidth() {
    Piece piece = Pieces.of(FRAME);
    assertEquals(Length.mm(300), piece.part("rail").finishedLength());
    assertEquals(275_000, volume(piece, "rail"), 0.01);
    assertEquals(375_000, volume(piece, "stile"), 0.01);
    assertEquals("mitre", piece.part("rail").cuts().getFirst().term());
    assertEquals(0, piece.part("rail").solid().sharedVolumeMm3(piece.part("stile").solid()), 0.001);
  }

  /** 300 x 60 x 20 less 20 x 20/2 x 60 = 348,000; 200 x 60 x 20 less the same = 228,000. */
  @Test
  void caseIsMitredOverTheThickness() {
    Piece piece = Pieces.of(CASE);
    assertEquals(348_000, volume(piece, "front"), 0.01);
    assertEquals(228_000, volume(piece, "side"), 0.01);
    assertEquals("bevel", piece.part("side").cuts().getFirst().term());
    assertEquals(0, piece.part("front").solid().sharedVolumeMm3(piece.part("side").solid()), 0.001);
  }

  /**
   * A slot along the mitre, 8 deep square to it, is longer along the part: 8 x root 2 = 11.3137.
   * Over 50 that is 565.685 mm2, 6 thick: 3394.1 mm3 of each.
   */
  @Test
  void splineOfAFrameRunsAlongTheMitre() {
    Piece piece = Pieces.of(splined(FRAME));
    assertEquals(275_000 - 3394.1, volume(piece, "rail"), 0.5);
    assertEquals(375_000 - 3394.1, volume(piece, "stile"), 0.5);
    assertEquals(1, piece.joints().getFirst().fasteners().getFirst().count());
  }

  /** 6 x 8 over 60 is 2880 mm3. */
  @Test
  void splineOfACaseRunsFromEdgeToEdge() {
    Piece piece = Pieces.of(splined(CASE));
    assertEquals(348_000 - 2880, volume(piece, "front"), 0.5);
    assertEquals(228_000 - 2880, volume(piece, "side"), 0.5);
  }

  @Test
  void equalPartsOfAFrameShareAMark() {
    Piece piece =
        Pieces.of(
            """
            parts:
              left: {stock: ash, x: 0 to 50, y: 0 to 20, z: 0 to 400, grain: z}
              right: {stock: ash, x: 250 to 300, y: 0 to 20, z: 0 to 400, grain: z}
              low: {stock: ash, x: 50 to 250, y: 0 to 20, z: 0 to 50, grain: x}
              high: {stock: ash, x: 50 to 250, y: 0 to 20, z: 350 to 400, grain: x}
            joints:
              - mitre: {end: low.left, into: left, spline: pin, thickness: 6, depth: 8}
              - mitre: {end: low.right, into: right, spline: pin, thickness: 6, depth: 8}
              - mitre: {end: high.left, into: left, spline: pin, thickness: 6, depth: 8}
              - mitre: {end: high.right, into: right, spline: pin, thickness: 6, depth: 8}
            """);
    assertEquals(2, piece.marks().size());
  }

  @Test
  void faultsAreTold() {
    assertCodes(List.of("mitre-unequal"), FRAME.replace("z: 350 to 400", "z: 351 to 400"));
    assertCodes(List.of("mitre-corner"), FRAME.replace("z: 350 to 400", "z: 340 to 390"));
    assertCodes(
        List.of("mitre-end"), FRAME.replace("z: 0 to 400, grain: z", "z: 300 to 400, grain: x"));
    assertCodes(List.of("mitre-spline"), FRAME.replace("glue", "depth: 8, glue"));
    assertCodes(List.of("mitre-spline"), splined(FRAME).replace("depth: 8, ", ""));
    assertCodes(
        List.of("spline-breaks-out"), splined(FRAME).replace("thickness: 6", "thickness: 20"));
    // 20 x root 2 x 2/3 = 18.86 less half of 6 leaves 15.86 to the outer face
    assertCodes(List.of(), splined(CASE).replace("depth: 8", "depth: 15.8"));
    assertCodes(List.of("spline-breaks-out"), splined(CASE).replace("depth: 8", "depth: 15.9"));
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
    assertTrue(faults.stream().noneMatch(fault -> fault.hints().isEmpty()));
  }
}
