package storyrod.planset;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.planset.Layouts.Cut;

/**
 * The height of the table of a sheet's cuts, in columns beside each other. Fences are never broken;
 * where they are long, as in both units, what stands beside them may need a second line.
 *
 * @param columns the cuts in order
 * @param widthMm what all columns have
 */
record CutTable(List<List<Cut>> columns, Texts texts, double widthMm) {
  private static final TextMeasure HEAD = new TextMeasure(PdfFonts.BOLD, 8.5, 1.3);

  /** Beside the cells of a row, and beside all columns but the last, as in the style sheet. */
  private static final double PADDING_MM = 4 * 1.6 + 3 * 4;

  private static final double GUTTER_MM = 8;

  /** The columns with what stands in them, by the keys of their heads. */
  private static final List<Column> ALL =
      List.of(
          new Column("column.cut", cut -> Integer.toString(cut.number())),
          new Column("column.cut-from", Cut::of),
          new Column("column.direction", Cut::direction),
          new Column("column.fence", Cut::fence),
          new Column("column.gives", Cut::gives));

  private record Column(String head, Function<Cut, String> text) {
    double widthMm(List<Cut> cuts, Texts texts) {
      return Stream.concat(
              Stream.of(HEAD.widthMm(texts.say(head))),
              cuts.stream().map(text).map(TableHeights.CELL::printedMm))
          .mapToDouble(each -> each)
          .max()
          .orElseThrow();
    }
  }

  double heightMm() {
    return columns.stream()
        .mapToDouble(cuts -> TableHeights.ROW_MM + TableHeights.rows(cuts, this::mayWrap))
        .max()
        .orElse(0);
  }

  private List<TableHeights.Cell> mayWrap(Cut cut) {
    return areInOneLine() ? List.of() : List.of(TableHeights.size(cut.fence()));
  }

  /** Whether the rows of every column have room for their cells in one line. */
  boolean areInOneLine() {
    double room = widthMm / Layouts.COLUMNS - PADDING_MM;
    return columns.stream()
        .allMatch(cuts -> cellsMm(cuts) <= (isLast(cuts) ? room : room - GUTTER_MM));
  }

  private boolean isLast(List<Cut> cuts) {
    return columns.size() == Layouts.COLUMNS && cuts == columns.getLast();
  }

  private double cellsMm(List<Cut> cuts) {
    return ALL.stream().mapToDouble(column -> column.widthMm(cuts, texts)).sum();
  }
}
