package storyrod.planset;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import storyrod.planset.PdfText.Glyph;

/** No page is nearly empty. */
final class FillChecks {
  private static final double LEAST = 0.15;
  static final int DPI = 30;

  private FillChecks() {}

  /** Pages on which less is printed, but where the next begins a section, or there is none. */
  static List<String> nearlyEmpty(FinishedPdf pdf) throws IOException {
    return sparse(pdf, LEAST).stream()
        .filter(each -> each.page() < pdf.count() && !begins(pdf, each.page() + 1))
        .map(Sparse::toString)
        .toList();
  }

  /** A page that is printed only so far down. */
  record Sparse(int page, double fill) {
    @Override
    public String toString() {
      return "page " + page + " is full to " + fill;
    }
  }

  /** All pages behind the first on which less than a share is printed. */
  static List<Sparse> sparse(FinishedPdf pdf, double least) throws IOException {
    List<Sparse> faults = new ArrayList<>();
    try (PDDocument document = PdfText.open(pdf.bytes())) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 2; page <= pdf.count(); page++) {
        if (textFill(pdf, page) < least) {
          double fill = fill(renderer.renderImageWithDPI(page - 1, DPI), pdf.paper(page));
          if (fill < least) {
            faults.add(new Sparse(page, fill));
          }
        }
      }
    }
    return faults;
  }

  private static boolean begins(FinishedPdf pdf, int page) {
    return pdf.bookmarks().stream().anyMatch(each -> each.level() == 0 && each.target() == page);
  }

  /** How far down text reaches; drawings may reach further. */
  private static double textFill(FinishedPdf pdf, int page) {
    Paper paper = pdf.paper(page);
    double lowest =
        pdf.pages().get(page).stream()
            .mapToDouble(Glyph::bottom)
            .filter(bottom -> bottom < paper.heightMm() - paper.bottomMm())
            .max()
            .orElse(0);
    return (lowest - paper.topMm()) / paper.textHeightMm();
  }

  /**
   * How far down a page is printed, as a share of its text; drawn at {@value #DPI} dots an inch.
   */
  static double fill(BufferedImage page, Paper paper) {
    double rowsPerMm = DPI / 25.4;
    int top = (int) Math.ceil(paper.topMm() * rowsPerMm);
    int bottom = (int) Math.floor((paper.heightMm() - paper.bottomMm()) * rowsPerMm);
    int row = bottom;
    while (row > top && isWhite(page, row)) {
      row--;
    }
    return (double) (row - top) / (bottom - top);
  }

  static boolean isWhite(BufferedImage page, int row) {
    for (int x = 0; x < page.getWidth(); x++) {
      if ((page.getRGB(x, row) & 0xFF) < 0xE0) {
        return false;
      }
    }
    return true;
  }
}
