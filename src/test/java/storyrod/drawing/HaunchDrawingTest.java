package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Dimension;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** A haunched tenon and its socket can be made from the drawings alone; worked by hand. */
class HaunchDrawingTest {
  private static final Piece PIECE = piece();

  /** An upper rail with equal haunches at its upper edge, a lower one with unlike ones below. */
  static Piece piece() {
    return Pieces.of(
        """
        parts:
          leg: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 420, grain: z}
          far-leg: {stock: odd, x: 400 to 450, y: 0 to 30, z: 0 to 430, grain: z}
          rail: {stock: ash, x: leg.right to far-leg.left, y: 5 to 25, z: 330 to 420, grain: x}
          low-rail: {stock: ash, x: leg.right to far-leg.left, y: 5 to 25, z: 60 to 130, grain: x}
        joints:
          - tenon: {end: rail.left, into: leg, depth: 32, thickness: 7, haunch: top, haunch-width: 29, haunch-depth: 8}
          - tenon: {end: rail.right, into: far-leg, depth: 32, thickness: 7, haunch: top, haunch-width: 29, haunch-depth: 8}
          - tenon: {end: low-rail.left, into: leg, depth: 31, thickness: 7, haunch: bottom, haunch-width: 21, haunch-depth: 9}
          - tenon: {end: low-rail.right, into: far-leg, depth: 31, thickness: 7, haunch: bottom, haunch-width: 21, haunch-depth: 11}
        """);
  }

  private static Drawing drawing(String part) {
    return PartDrawing.draw(PIECE.mark(PIECE.part(part).mark()), PIECE, WindowBench.PART_AREA);
  }

  private static List<String> dimensions(String part) {
    return Clean.dimensions(drawing(part)).stream().map(Dimension::text).sorted().toList();
  }

  /**
   * The rail, 350 between its shoulders and 414 over all, is 90 wide: 29 of haunch and 55 of tenon
   * leave a shoulder of 6. The tenon lies 6.5 from the face.
   */
  @Test
  void theHaunchHasItsWidthAndItsLengthOnceForBothEnds() {
    assertEquals(
        List.of("20", "29", "32", "350", "414", "55", "6.5", "7", "8", "90"), dimensions("rail"));
    String notes = Clean.notes(drawing("rail"));
    assertTrue(notes.contains("2× 7 × 55 × 32 haunched tenons for A and B"), notes);
  }

  /** The tenons alone are alike, 70 - 21 - 6 = 43 wide; the haunches are not. */
  @Test
  void unlikeHaunchesAreBothDimensioned() {
    List<String> dimensions = dimensions("low-rail");
    assertTrue(dimensions.containsAll(List.of("9", "11", "21", "43", "31")), dimensions::toString);
  }

  /** The upper socket runs out at the end of this leg; the lower one begins 60 from its foot. */
  @Test
  void theSocketIsPlacedAndItsNoteGivesSizeAndDepth() {
    String notes = Clean.notes(drawing("leg"));
    assertTrue(notes.contains("7 × 29 haunch socket for C, 8 deep"), notes);
    assertTrue(notes.contains("7 × 55 mortise for C, 33.5 deep"), notes);
    assertTrue(notes.contains("7 × 21 haunch socket for D, 9 deep"), notes);
    assertTrue(dimensions("leg").containsAll(List.of("29", "55", "60", "21", "43", "81")));
  }
}
