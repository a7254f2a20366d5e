package storyrod.planset;

import java.util.regex.Pattern;
import org.openpdf.text.pdf.BaseFont;

/**
 * How high a text stands on a page, worked out from the widths of its glyphs before anything is
 * laid out. Small figures of fractions count as large ones, so a text is never higher than it says.
 *
 * @param font the font and its weight
 * @param sizePt the size in points
 * @param lineHeight a line's height as a multiple of the size
 */
record TextMeasure(PdfFonts font, double sizePt, double lineHeight) {
  private static final double MM_PER_POINT = 25.4 / 72;

  /** The figures of a fraction, and their size, as in the style sheet. */
  private static final Pattern FRACTION = Pattern.compile("(\\d{1,3})/(\\d{1,3})");

  private static final double SMALL_FIGURES = 0.7;

  /** The height in mm at a width in mm; no text has no height. */
  double heightMm(String text, double widthMm) {
    return text.isEmpty() ? 0 : lines(text, widthMm) * lineMm();
  }

  double lineMm() {
    return sizePt * lineHeight * MM_PER_POINT;
  }

  private int lines(String text, double widthMm) {
    double space = widthMm(" ");
    int lines = 1;
    double at = 0;
    for (String word : Together.bound(text).split(" ")) {
      double width = widthMm(Together.unbound(word));
      if (at > 0 && at + space + width > widthMm) {
        lines++;
        at = 0;
      }
      at += at > 0 ? space + width : width;
    }
    return lines;
  }

  /** The width in mm of a text in one line, the figures of its fractions as small as on a page. */
  double printedMm(String text) {
    double less =
        FRACTION
            .matcher(text)
            .results()
            .mapToDouble(each -> widthMm(each.group(1)) + widthMm(each.group(2)))
            .sum();
    return widthMm(text) - (1 - SMALL_FIGURES) * less;
  }

  /** The width in mm of a text in one line. */
  double widthMm(String text) {
    BaseFont base = font.font();
    return base.getWidthPoint(text, (float) sizePt) * MM_PER_POINT;
  }
}
