package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Dimension;
import storyrod.piece.Mark;
import storyrod.piece.MitreTest;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/** What the drawings of mitred parts say; the sizes are worked by hand. */
class MitreDrawingTest {
  private static Drawing drawing(String body, String part) {
    Piece piece = Pieces.of(body);
    Mark mark = piece.mark(piece.part(part).mark());
    return PartDrawing.draw(mark, piece, WindowBench.PART_AREA);
  }

  private static List<String> dimensions(Drawing drawing) {
    return Clean.dimensions(drawing).stream().map(Dimension::text).sorted().toList();
  }

  /** Overall 300 x 50 x 20; a spline of 6 in the middle of 20 lies 7 from the face. */
  @Test
  void frameShowsWhereTheSlotLiesInTheThickness() {
    Drawing drawing = drawing(MitreTest.splined(MitreTest.FRAME), "rail");
    assertEquals(List.of("20", "300", "50", "6", "7"), dimensions(drawing));
    String notes = Clean.notes(drawing);
    assertTrue(notes.contains("end mitred 45° from square"), notes);
    assertTrue(notes.contains("6 spline slot, 8 deep, square to the mitre"), notes);
  }

  /**
   * Of 4 in the middle of 20 at 1:2, 2 mm on paper: shown larger, its sizes there and only there.
   */
  @Test
  void aNarrowSlotIsShownInADetail() {
    String narrow = MitreTest.splined(MitreTest.FRAME).replace("thickness: 6", "thickness: 4");
    Drawing drawing = drawing(narrow, "rail");
    assertEquals(List.of("20", "300", "4", "50", "8"), dimensions(drawing));
    List<Dimension> enlarged =
        Clean.details(drawing).flatMap(each -> Clean.dimensions(each.elements()).stream()).toList();
    assertEquals(List.of("4", "8"), enlarged.stream().map(Dimension::text).sorted().toList());
    assertEquals(List.of(), Clean.faults(drawing));
  }

  /**
   * Overall 300 x 60 x 20, the long side as long and so not told again. The middle of the slot lies
   * a third of 20 x root 2 = 9.43 along the mitre, its nearer corner 3 before it: 6.43/root 2 = 4.5
   * from the inner face.
   */
  @Test
  void caseShowsWhereTheSlotLiesOnTheMitre() {
    Drawing drawing = drawing(MitreTest.splined(MitreTest.CASE), "front");
    assertEquals(List.of("20", "300", "60", "≈ 4.5"), dimensions(drawing));
    assertTrue(
        Clean.notes(drawing).contains("6 spline slot, 8 deep, square to the mitre"),
        Clean.notes(drawing));
  }
}
