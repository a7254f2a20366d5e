package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Dimension;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** A stopped dado and its notch can be made from the drawings alone; worked by hand. */
class StoppedDadoDrawingTest {
  private static final Piece PIECE =
      Pieces.of(
          """
          parts:
            side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 600, grain: z}
            shelf: {stock: ply18, x: side.right to 418, y: 0 to 300, z: 200 to 218, grain: x}
          joints:
            - dado: {end: shelf.left, into: side, depth: 6, stop: 12, glue: yes}
          """);

  private static Drawing drawing(String part) {
    return PartDrawing.draw(PIECE.mark(PIECE.part(part).mark()), PIECE, WindowBench.PART_AREA);
  }

  private static List<String> dimensions(String part) {
    return Clean.dimensions(drawing(part)).stream().map(Dimension::text).sorted().toList();
  }

  /**
   * It is 18 wide and 300 - 12 = 288 long, 200 from the end of a side of 600 × 300 × 18; its depth
   * stands in the note and, in brackets, in a detail.
   */
  @Test
  void theDadoHasItsPlaceItsWidthAndItsLength() {
    assertEquals(List.of("(6)", "18", "18", "200", "288", "300", "600"), dimensions("side"));
    String notes = Clean.notes(drawing("side"));
    assertTrue(notes.contains("stopped dado for B, 6 deep"), notes);
  }

  /** The shelf is 400 + 6 long. */
  @Test
  void theNotchHasBothItsSizes() {
    assertEquals(List.of("12", "18", "300", "406", "6"), dimensions("shelf"));
    String notes = Clean.notes(drawing("shelf"));
    assertTrue(notes.contains("notch"), notes);
  }
}
