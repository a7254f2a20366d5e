package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/**
 * Of each trench that ends inside its part the drawing says where: by figures taken from its own
 * corners, or by a note that counts it with others, gives its size or names what it is in line
 * with.
 */
class StopsTest {
  @TestFactory
  List<DynamicTest> everyTrenchSaysWhereItEnds() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          assertEquals(
              List.of(), piece.marks().stream().flatMap(mark -> untold(piece, mark)).toList());
        });
  }

  private static Stream<String> untold(Piece piece, Mark mark) {
    FlatPart flat = FlatPart.of(mark.shown());
    return flat.trenches().stream()
        .filter(trench -> !notes(flat, piece, trench).anyMatch(StopsTest::tells))
        .flatMap(
            trench ->
                ends(flat, trench)
                    .filter(end -> !isMeasured(flat, piece, end))
                    .map(end -> mark.mark() + " " + trench.term() + " " + end));
  }

  /** An end of a trench's run that lies inside the part. */
  private record End(Box trench, Axis axis, Length at) {}

  private static Stream<End> ends(FlatPart flat, Cut.Trench trench) {
    Box seen = RunOuts.seen(flat, trench);
    Axis run =
        DimensionSides.inPlane(PlacedView.home(flat, trench)).stream()
            .max(Comparator.comparing(seen::size))
            .orElseThrow();
    return Stream.of(-1, 1)
        .map(sign -> new End(seen, run, seen.on(run).end(sign)))
        .filter(end -> isInside(flat, end));
  }

  private static boolean isInside(FlatPart flat, End end) {
    return end.at.isPositive() && end.at.isShorterThan(flat.size(end.axis));
  }

  private static boolean isMeasured(FlatPart flat, Piece piece, End end) {
    return Measures.of(flat, piece.description().printed(), piece.description().words()).stream()
        .filter(each -> each.axis() == end.axis)
        .flatMap(each -> Stream.of(each.from(), each.to()))
        .anyMatch(point -> point.on(end.axis).equals(end.at) && lies(point, end.trench));
  }

  private static boolean lies(Point point, Box in) {
    return Arrays.stream(Axis.values()).allMatch(axis -> in.on(axis).contains(point.on(axis)));
  }

  private static Stream<CutNote> notes(FlatPart flat, Piece piece, Cut.Trench trench) {
    return CutNotes.of(flat, piece, piece.description().words()).stream()
        .filter(note -> note.words().contains(trench.term()))
        .filter(note -> note.tips().stream().anyMatch(tip -> lies(tip, trench.removed())));
  }

  private static boolean tells(CutNote note) {
    String words = note.words();
    return words.matches("\\d+× .*") || words.contains(" × ") || words.contains("in line with");
  }

  /** The grooves of both panels end 6 from the ends; the upper one is not dimensioned again. */
  @Test
  void theSecondOfTwoGroovesNamesTheFirst() {
    Piece piece = piece("0 to 300");
    String notes = notes(piece);
    assertTrue(notes.contains("stopped groove for B, 4 deep\n"), notes);
    assertTrue(notes.contains("stopped groove for C, 4 deep, ends in line with that for B"), notes);
  }

  /** What ends elsewhere has figures of its own. */
  @Test
  void aShorterGrooveNamesNoOther() {
    assertTrue(!notes(piece("20 to 280")).contains("in line"));
  }

  private static String notes(Piece piece) {
    FlatPart flat = FlatPart.of(piece.part("side"));
    return String.join(
            "\n",
            CutNotes.of(flat, piece, piece.description().words()).stream()
                .map(CutNote::words)
                .toList())
        + "\n";
  }

  private static Piece piece(String upper) {
    return Pieces.of(
        """
        parts:
          side: {stock: ply18, x: 0 to 18, y: -20 to 320, z: 0 to 200, grain: y}
          low: {stock: ply6, x: side.right to 418, y: 0 to 300, z: 20 to 26, grain: x}
          high: {stock: ply6, x: side.right to 318, y: %s, z: 120 to 126, grain: x}
        joints:
          - groove: {end: low.left, into: side, depth: 4, stopped: yes}
          - groove: {end: high.left, into: side, depth: 4, stopped: yes}
        """
            .formatted(upper));
  }
}
