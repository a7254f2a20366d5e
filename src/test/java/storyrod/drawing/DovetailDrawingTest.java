package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Dimension;
import storyrod.piece.DovetailTest;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** What the drawings of dovetailed boards say; the sizes are worked by hand. */
class DovetailDrawingTest {
  private static Drawing drawing(String body, String part) {
    Piece piece = Pieces.of(body);
    Mark mark = piece.mark(piece.part(part).mark());
    return PartDrawing.draw(mark, piece, WindowBench.PART_AREA);
  }

  private static List<String> dimensions(Drawing drawing) {
    return Clean.dimensions(drawing).stream().map(Dimension::text).sorted().toList();
  }

  /** Overall 300 x 100 x 20; half pin 10, tail 35, to the next tail 45, baseline 30. */
  @Test
  void tailsAreSetOutOnTheFace() {
    Drawing drawing = drawing(DovetailTest.CORNER, "tail-board");
    assertEquals(List.of("10", "100", "20", "30", "300", "35", "45"), dimensions(drawing));
    assertTrue(Clean.notes(drawing).contains("2 tails for A, slope 1:6"), Clean.notes(drawing));
  }

  /** Overall 400 x 100 x 30; the same row on the end, baseline 20. */
  @Test
  void pinsAreSetOutOnTheEnd() {
    Drawing drawing = drawing(DovetailTest.CORNER, "pin-board");
    assertEquals(List.of("10", "100", "20", "30", "35", "400", "45"), dimensions(drawing));
    assertTrue(
        Clean.notes(drawing).contains("pins for 2 tails of B, slope 1:6"), Clean.notes(drawing));
  }

  /** Tails 30 long narrow by 30/6 = 5 at each side, from 35 to 25; atan 1/6 = 9.46°. */
  @Test
  void slopeIsToldAsTheSawIsSetAndByTheNarrowEnds() {
    for (String part : List.of("tail-board", "pin-board")) {
      String notes = Clean.notes(drawing(DovetailTest.CORNER, part));
      assertTrue(notes.contains("slope 1:6 (9.5°; narrowing to 25)"), notes);
    }
  }

  /** Sockets 24 deep of 30, with a lap of 6. */
  @Test
  void halfBlindSocketsHaveTheirDepthOnTheEnd() {
    String blind = DovetailTest.CORNER.replace("glue", "lap: 6, glue");
    assertEquals(
        List.of("10", "100", "20", "24", "30", "35", "400", "45"),
        dimensions(drawing(blind, "pin-board")));
  }

  /** Three tails of 20 with pins of 10: from the first to the last 60 in two steps of 30. */
  @Test
  void spacingIsAChain() {
    String three = DovetailTest.CORNER.replace("tails: 2", "tails: 3");
    assertTrue(dimensions(drawing(three, "tail-board")).contains("2 × 30 (= 60)"));
  }

  /** Fingers of 1/4 in, and pins of 1/4 in at the edges of boards that are 18 in long. */
  @TestFactory
  List<DynamicTest> rowsAtEndsAreLargeEnoughToRead() {
    return AllProjects.each(
        sample -> {
          for (Mark mark : sample.set().piece().marks()) {
            double mm = EndRows.narrowestMm(FlatPart.of(mark.shown()));
            Drawing drawing = sample.set().drawings().parts().get(mark.mark());
            double onPaper = mm * drawing.scale().orElseThrow().factor();
            assertTrue(onPaper >= 3, mark.mark() + " " + onPaper + " of " + mm);
          }
        });
  }

  /** Half pin 10, tails 35, pin 10 between them; a board without rows has nothing narrow. */
  @Test
  void theNarrowestPinCounts() {
    Piece piece = Pieces.of(DovetailTest.CORNER);
    assertEquals(10, EndRows.narrowestMm(FlatPart.of(piece.part("tail-board"))), 1e-9);
    List<Scale> scales = List.of(new Scale(1, 2), new Scale(1, 5));
    assertEquals(0.5, EndRows.enough(FlatPart.of(piece.part("tail-board")), scales), 1e-9);
  }
}
