package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** A stranger can make parts with slots and dowel holes from their drawings alone. */
class SlotsDrawingTest {
  private static final Piece PIECE =
      Pieces.of(
          """
            dowel: {kind: dowel, title: Dowel, length: 40, diameter: 8}
            oval: {kind: biscuit, title: Biscuit, length: 56, width: 23, thickness: 4, slot-depth: 12}
            strip: {kind: loose-tenon, title: Loose tenon, length: 50, width: 30, thickness: 7}
          parts:
            leg: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
            rail: {stock: ash, x: leg.right to 350, y: 5 to 25, z: 300 to 400, grain: x}
            low: {stock: ash, x: leg.right to 350, y: 5 to 25, z: 100 to 200, grain: x}
            shelf: {stock: ash, x: leg.right to 350, y: rail.back to 125, z: 370 to 390, grain: x}
          joints:
            - loose-tenon: {end: rail.left, into: leg, tenon: strip, count: 2, spacing: 45}
            - dowels: {end: low.left, into: leg, dowel: dowel, count: 2}
            - biscuits: {end: shelf.front, into: rail, biscuit: oval, count: 3}
          """);

  private static Drawing of(String part) {
    return PartDrawing.draw(PIECE.mark(PIECE.part(part).mark()), PIECE, WindowBench.PART_AREA);
  }

  private static List<String> figures(String part) {
    return Clean.dimensions(of(part)).stream().map(Drawing.Dimension::text).toList();
  }

  private static String notes(String part) {
    return String.join(" ", Painter.texts(of(part)).stream().map(PlacedText::text).toList());
  }

  @Test
  void nothingLiesOnATextOrOutsideThePaper() {
    for (Mark mark : PIECE.marks()) {
      Drawing drawing = PartDrawing.draw(mark, PIECE, WindowBench.PART_AREA);
      assertEquals(List.of(), Clean.faults(drawing), mark.title());
    }
  }

  /** Middles at 372.5 and 327.5 of 400: 27.5 from the top, 45 apart, 15 from the edge. */
  @Test
  void mortisesHavePlaceSpacingSizeAndDepth() {
    assertTrue(figures("leg").containsAll(List.of("27.5", "45", "15")), figures("leg").toString());
    assertTrue(
        notes("leg").contains("2× 7 × 30 mortises for loose tenon, round ends, 26.5 deep"),
        notes("leg"));
    assertTrue(
        notes("rail").contains("2× 7 × 30 mortises for loose tenon, round ends, 26.5 deep"),
        notes("rail"));
  }

  /** Middles at 125 and 175 of 400. */
  @Test
  void dowelHolesHavePlaceSpacingSizeAndDepth() {
    assertTrue(figures("leg").containsAll(List.of("125", "50")), figures("leg").toString());
    assertTrue(notes("leg").contains("2× Ø 8 dowel holes, 21.5 deep, for dowel"), notes("leg"));
  }

  /** Three shares of 100 mm: the first middle 50 from the end, 20 below the top. */
  @Test
  void biscuitSlotsHaveTheirMiddles() {
    assertTrue(
        figures("rail").containsAll(List.of("50", "20", "2 × 100 (= 200)")),
        figures("rail").toString());
    assertTrue(
        notes("rail").contains("3× 4 × 65 biscuit slots for biscuit, plunged, 12 deep"),
        notes("rail"));
  }
}
