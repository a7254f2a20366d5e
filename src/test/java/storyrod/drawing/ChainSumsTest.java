package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/**
 * Where figures stand in a row, what is printed of them adds up to what is printed of the whole:
 * whoever measures them one after the other comes out where the whole ends. Projects are in inches
 * and in millimetres.
 */
class ChainSumsTest {
  @TestFactory
  List<DynamicTest> rowsAddUpAsPrinted() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          assertEquals(
              List.of(), piece.marks().stream().flatMap(mark -> faults(piece, mark)).toList());
        });
  }

  private static Stream<String> faults(Piece piece, Mark mark) {
    FlatPart flat = FlatPart.of(mark.shown());
    LengthFormat format = piece.description().format();
    List<Wanted> all = Measures.of(flat, format, piece.description().words());
    return all.stream()
        .flatMap(
            whole ->
                rows(all, whole, whole.from().on(whole.axis())).stream()
                    .filter(row -> !sum(row, format).equals(format.rounded(whole.measure())))
                    .map(row -> mark.mark() + ": " + texts(row) + " are not " + whole.text()));
  }

  /** The rows of shorter figures that lead from a place to the end of a figure. */
  private static List<List<Wanted>> rows(List<Wanted> all, Wanted whole, Length from) {
    List<List<Wanted>> rows = new ArrayList<>();
    Length end = whole.to().on(whole.axis());
    for (Wanted next : all) {
      boolean goesOn = next.axis() == whole.axis() && next.from().on(next.axis()).equals(from);
      Length to = next.to().on(next.axis());
      if (goesOn && next != whole && !to.isLongerThan(end)) {
        List<List<Wanted>> rest = to.equals(end) ? List.of(List.of()) : rows(all, whole, to);
        rest.forEach(row -> rows.add(Stream.concat(Stream.of(next), row.stream()).toList()));
      }
    }
    return rows;
  }

  private static Length sum(List<Wanted> row, LengthFormat format) {
    return row.stream()
        .map(each -> format.rounded(each.measure()))
        .reduce(Length.ZERO, Length::plus);
  }

  private static String texts(List<Wanted> row) {
    return String.join(" + ", row.stream().map(Wanted::text).toList());
  }
}
