package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.apache.pdfbox.pdmodel.font.PDFont;
import storyrod.planset.PdfText.Glyph;

/** Fonts, glyphs, sizes and margins. */
final class TextChecks {
  private static final double LEAST_PT = 7;

  /** The figures of a fraction, of which two and the slash stand as high as one figure. */
  private static final double FRACTION = 0.69;

  /** PDFBox gives whole hundredths of points, and a glyph's advance is wider than its ink. */
  private static final double ROUNDED = 0.05;

  private static final double OVERHANG_MM = 0.3;
  private static final double HEAD_FOOT_MM = 14;

  /** Between the text and the foot there is at least this much. */
  private static final double ABOVE_FOOT_MM = 4;

  private TextChecks() {}

  static List<String> fonts(FinishedPdf pdf) {
    return pdf.fonts().isEmpty()
        ? List.of("no fonts at all")
        : pdf.fonts().stream().filter(each -> !each.isEmbedded()).map(PDFont::getName).toList();
  }

  static List<String> missing(FinishedPdf pdf) {
    return faults(pdf, each -> each.glyph() == 0);
  }

  static List<String> small(FinishedPdf pdf) {
    List<String> faults = new ArrayList<>();
    for (List<Glyph> glyphs : pdf.pages().values()) {
      for (int i = 0; i < glyphs.size(); i++) {
        double least = isOfFraction(glyphs, i) ? LEAST_PT * FRACTION : LEAST_PT;
        if (glyphs.get(i).size() < least - ROUNDED) {
          faults.add(glyphs.get(i).toString());
        }
      }
    }
    return faults;
  }

  /** Whether a slash stands among the figures around a glyph. */
  private static boolean isOfFraction(List<Glyph> glyphs, int at) {
    return isSlash(glyphs, at) || beyond(glyphs, at, 1) || beyond(glyphs, at, -1);
  }

  private static boolean beyond(List<Glyph> glyphs, int from, int step) {
    int at = from;
    while (at >= 0 && at < glyphs.size() && glyphs.get(at).text().matches("\\d")) {
      at += step;
    }
    return at != from && isSlash(glyphs, at);
  }

  private static boolean isSlash(List<Glyph> glyphs, int at) {
    return at >= 0 && at < glyphs.size() && glyphs.get(at).text().matches("[/⁄]");
  }

  /** The text keeps to its room, the running head and the foot to theirs. */
  static List<String> outside(FinishedPdf pdf) {
    return faults(pdf, each -> isOutside(each, pdf.paper(each.page())));
  }

  private static boolean isOutside(Glyph each, Paper paper) {
    double foot = paper.heightMm() - paper.bottomMm();
    return each.left() < paper.sideMm() - OVERHANG_MM
        || each.right() > paper.widthMm() - paper.sideMm() + OVERHANG_MM
        || each.top() < HEAD_FOOT_MM
        || each.bottom() > paper.heightMm() - HEAD_FOOT_MM
        || each.page() > 1
            && each.bottom() > foot + OVERHANG_MM
            && each.top() < foot + ABOVE_FOOT_MM;
  }

  private static List<String> faults(FinishedPdf pdf, Predicate<Glyph> fault) {
    return pdf.pages().values().stream()
        .flatMap(List::stream)
        .filter(fault)
        .map(Glyph::toString)
        .toList();
  }
}
