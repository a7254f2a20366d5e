package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Note;
import storyrod.measure.LengthFormat;
import storyrod.piece.DovetailTest;
import storyrod.piece.Dovetails;
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

  /**
   * Overall 300 x 100 x 20; half pin 10, tail 35, to the next tail 45, baseline 30. In brackets,
   * with the first tail enlarged, where it narrows to 25, and the baseline once more.
   */
  @Test
  void tailsAreSetOutOnTheFace() {
    Drawing drawing = drawing(DovetailTest.CORNER, "tail-board");
    assertEquals(
        List.of("(25)", "(30)", "10", "100", "20", "30", "300", "35", "45"), dimensions(drawing));
    assertTrue(Clean.notes(drawing).contains("2 tails for A, slope 1:6"), Clean.notes(drawing));
  }

  /** Overall 400 x 100 x 30; the same row on the end, baseline 20. */
  @Test
  void pinsAreSetOutOnTheEnd() {
    Drawing drawing = drawing(DovetailTest.CORNER, "pin-board");
    assertEquals(List.of("(25)", "10", "100", "20", "30", "35", "400", "45"), dimensions(drawing));
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

  /** Sockets 24 deep of 30, with a lap of 6; they narrow by 24/6 = 4 at each side. */
  @Test
  void halfBlindSocketsHaveTheirDepthOnTheEnd() {
    String blind = DovetailTest.CORNER.replace("glue", "lap: 6, glue");
    assertEquals(
        List.of("(27)", "10", "100", "20", "24", "30", "35", "400", "45"),
        dimensions(drawing(blind, "pin-board")));
  }

  /** Half pin, tail, the tail at its root and what is cut off stand in one detail, to its scale. */
  @TestFactory
  List<DynamicTest> everyDovetailedEndIsSetOutInADetail() {
    return AllProjects.each(
        sample -> {
          LengthFormat format = sample.set().piece().description().printed();
          for (Mark mark : sample.set().piece().marks()) {
            Drawing drawing = sample.set().drawings().parts().get(mark.mark());
            for (Dovetails row : FlatPart.of(mark.shown()).cuts(Dovetails.class)) {
              assertTrue(
                  Clean.details(drawing).anyMatch(detail -> setsOut(detail, row, format)),
                  mark.mark() + " " + row.from());
            }
          }
        });
  }

  private static boolean setsOut(Group detail, Dovetails row, LengthFormat format) {
    Dovetails.Tail tail = row.tails().getFirst();
    List<Dimension> shown = Clean.dimensions(detail.elements());
    String slope = "slope 1:" + row.slopeWord();
    Stream<String> figures =
        Stream.of(
            format.format(tail.wide().from()),
            format.format(tail.wide().length()),
            "(" + format.format(tail.narrow().length()) + ")");
    return figures.allMatch(text -> shown.stream().anyMatch(each -> each.text().equals(text)))
        && shown.stream().allMatch(each -> isToScale(each, Clean.detailFactor(detail)))
        && detail.elements().stream()
            .anyMatch(each -> each instanceof Note note && note.lines().toString().contains(slope));
  }

  private static boolean isToScale(Dimension it, double factor) {
    return Math.abs(DimensionLines.lengthMm(it) - it.measure().toMm() * factor) < 1e-6;
  }

  /** The narrowest pin of a row is clear of wide lines in its detail. */
  @TestFactory
  List<DynamicTest> detailsOfRowsAreTwiceAsClearAsDrawingsMustBe() {
    return AllProjects.each(
        sample -> {
          for (Mark mark : sample.set().piece().marks()) {
            FlatPart flat = FlatPart.of(mark.shown());
            Drawing drawing = sample.set().drawings().parts().get(mark.mark());
            Clean.details(drawing)
                .filter(each -> each.elements().stream().anyMatch(Note.class::isInstance))
                .mapToDouble(each -> EndRows.narrowestMm(flat) * Clean.detailFactor(each))
                .forEach(mm -> assertTrue(mm >= 6, mark.mark() + " " + mm));
          }
        });
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
