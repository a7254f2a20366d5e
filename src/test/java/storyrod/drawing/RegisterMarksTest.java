package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.TileGrid.Cell;

/** Sheets are laid on each other by marks that nothing else runs through. */
class RegisterMarksTest {
  private static final TileGrid GRID = new TileGrid(new Size(200, 250), 2, 1);

  @Test
  void bothSheetsHaveTheSameMarksAndNoOthers() {
    RegisterMarks marks = new RegisterMarks(GRID, List.of());
    List<At> left = marks.of(new Cell(0, 0));
    assertEquals(2, left.size());
    assertEquals(left, marks.of(new Cell(1, 0)));
  }

  /** A long edge 4 mm below the upper end of the strip, where the mark would stand. */
  @Test
  void aMarkMovesAlongItsStripOffAnOutline() {
    Line edge = new Line(Role.THIN, List.of(new At(4, 4), new At(380, 4)));
    RegisterMarks marks = new RegisterMarks(GRID, List.of(edge));
    for (At at : marks.of(new Cell(0, 0))) {
      assertTrue(at.y() - 4 >= RegisterMarks.CLEAR, at.toString());
      assertEquals(GRID.stepX() + TileGrid.OVERLAP / 2, at.x(), 1e-9);
    }
    assertEquals(marks.of(new Cell(0, 0)), marks.of(new Cell(1, 0)));
  }

  @Test
  void fourSheetsShareTheMarkInTheMiddle() {
    TileGrid four = new TileGrid(new Size(200, 250), 2, 2);
    RegisterMarks marks = new RegisterMarks(four, List.of());
    At middle = new At(four.stepX() + TileGrid.OVERLAP / 2, four.stepY() + TileGrid.OVERLAP / 2);
    assertTrue(
        four.cells().stream().allMatch(cell -> marks.of(cell).contains(middle)), "not on all");
    Stream<At> all = four.cells().stream().flatMap(cell -> marks.of(cell).stream()).distinct();
    assertEquals(5, all.count());
  }
}
