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
    LengthFormat format = piece.description().format();
    List<Wanted> all = all(piece, mark);
    return all.stream()
        .flatMap(
            whole ->
                rows(all, whole, whole.from().on(whole.axis())).stream()
                    .filter(row -> Math.abs(sum(row, format) - printed(whole, format)) > 1e-6)
                    .map(row -> mark.mark() + ": " + texts(row) + " are not " + whole.text()));
  }

  private static List<Wanted> all(Piece piece, Mark mark) {
    FlatPart flat = FlatPart.of(mark.shown());
    return Measures.of(flat, piece.description().format(), piece.description().words());
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

  private static double sum(List<Wanted> row, LengthFormat format) {
    return row.stream().mapToDouble(each -> printed(each, format)).sum();
  }

  private static double printed(Wanted wanted, LengthFormat format) {
    return new Figures(format).total(wanted.text()).mm();
  }

  /** What is no whole number of 64ths of an inch, or of tenths of a millimetre, bears a sign. */
  @TestFactory
  List<DynamicTest> whatPrintRoundsSaysSo() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          LengthFormat format = piece.description().format();
          Figures figures = new Figures(format);
          List<String> wrong =
              piece.marks().stream()
                  .flatMap(mark -> all(piece, mark).stream())
                  .filter(each -> Figures.steps(each.text()).isEmpty() && !isLeaning(each, format))
                  .filter(each -> Figures.isAbout(each.text()) == isTrue(each, figures))
                  .map(each -> each.text() + " is " + each.measure())
                  .toList();
          assertEquals(List.of(), wrong);
        });
  }

  private static boolean isTrue(Wanted wanted, Figures figures) {
    return Math.abs(figures.length(wanted.text()).mm() - wanted.measure().toMm()) < 1e-3;
  }

  /** The mouth of a leaning slot, told as bits are: it is sawn to fit what goes in. */
  private static boolean isLeaning(Wanted wanted, LengthFormat format) {
    return wanted.text().equals(format.forBits().format(wanted.measure()))
        && !wanted.text().equals(format.told(wanted.measure()));
  }

  private static String texts(List<Wanted> row) {
    return String.join(" + ", row.stream().map(Wanted::text).toList());
  }
}
