package storyrod.planset;

import java.util.List;
import java.util.function.Function;

/** The heights in mm of headings and tables, with the measures of the style sheet. */
final class TableHeights {
  static final double H1_MM = 14.2;
  static final double ABOVE_H1_MM = 9;
  static final double ABOVE_H2_MM = 6;
  static final double FOLLOWING_H1_MM = ABOVE_H1_MM + H1_MM;
  static final double H2_MM = ABOVE_H2_MM + 6.6;
  static final double H3_MM = 7.7;
  static final double LINE_MM = 6.3;
  static final double ROW_MM = 6.05;
  private static final double BELOW_TEXT_MM = 1.5;

  static final TextMeasure CELL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.3);
  private static final TextMeasure SMALL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.42);
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final TextMeasure LEAD = new TextMeasure(PdfFonts.REGULAR, 11, 1.42);

  private TableHeights() {}

  /** A cell's text and the width that its column has for it, in mm. */
  record Cell(String text, double widthMm) {}

  /** A cell with a size; in both units what stands in brackets takes a line of its own. */
  static Cell size(String printed) {
    return new Cell(printed.contains(" [") ? "0 0" : "0", 0);
  }

  static double lead(String text, double widthMm) {
    return LEAD.heightMm(text, widthMm) + 3;
  }

  /** A small paragraph, none if it is empty. */
  static double small(String text, double widthMm) {
    return text.isEmpty() ? 0 : SMALL.heightMm(text, widthMm);
  }

  /** A paragraph with what stays free below it. */
  static double text(String text, double widthMm) {
    return TEXT.heightMm(text, widthMm) + BELOW_TEXT_MM;
  }

  /** Rows without their head; {@code wide} gives the cells of a row that may need two lines. */
  static <T> double rows(List<T> rows, Function<T, List<Cell>> wide) {
    return rows.stream().mapToDouble(row -> row(wide.apply(row))).sum();
  }

  /** A row by its highest cell. */
  static double row(List<Cell> cells) {
    double text =
        cells.stream()
            .mapToDouble(cell -> CELL.heightMm(cell.text(), cell.widthMm()))
            .max()
            .orElse(0);
    return Math.max(ROW_MM, ROW_MM - CELL.lineMm() + text);
  }
}
