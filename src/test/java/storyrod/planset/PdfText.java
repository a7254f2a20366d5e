package storyrod.planset;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What an independent reader finds in a PDF. */
final class PdfText {
  private static final double MM_PER_POINT = 25.4 / 72;

  private static final double SIZE_MM = 0.1;

  private PdfText() {}

  /** One glyph: where its box lies on the page in mm, y downwards, and its size in points. */
  record Glyph(
      int page,
      double left,
      double right,
      double top,
      double bottom,
      double size,
      int glyph,
      String font,
      String text) {}

  static PDDocument open(byte[] pdf) {
    try {
      return Loader.loadPDF(pdf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The sheet of each page, upright or turned; a page of any other size is an error. */
  static List<Paper> papers(PDDocument document, Paper upright) {
    List<Paper> papers = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      papers.add(
          Stream.of(upright, upright.turned())
              .filter(paper -> isOn(page, paper))
              .findFirst()
              .orElseThrow(() -> new AssertionError("a page of " + page.getMediaBox())));
    }
    return papers;
  }

  static List<Paper> papers(byte[] pdf, Paper upright) throws IOException {
    try (PDDocument document = open(pdf)) {
      return papers(document, upright);
    }
  }

  private static boolean isOn(PDPage page, Paper paper) {
    PDRectangle box = page.getMediaBox();
    return page.getRotation() == 0
        && Math.abs(box.getWidth() * MM_PER_POINT - paper.widthMm()) < SIZE_MM
        && Math.abs(box.getHeight() * MM_PER_POINT - paper.heightMm()) < SIZE_MM;
  }

  /** The text of a page counted from 1, or of all pages for 0. */
  static String text(byte[] pdf, int page) {
    try (PDDocument document = open(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setLineSeparator("\n");
      if (page > 0) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
      }
      return stripper.getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Glyph> glyphs(byte[] pdf) {
    List<Glyph> glyphs = new ArrayList<>();
    try (PDDocument document = open(pdf)) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition at) {
          glyphs.add(glyph(getCurrentPageNo(), at));
        }
      }.getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return glyphs;
  }

  private static Glyph glyph(int page, TextPosition at) {
    try {
      double bottom = at.getY() * MM_PER_POINT;
      int code = at.getCharacterCodes()[0];
      int glyph =
          at.getFont() instanceof org.apache.pdfbox.pdmodel.font.PDType0Font font
              ? font.codeToGID(code)
              : code;
      return new Glyph(
          page,
          at.getX() * MM_PER_POINT,
          (at.getX() + at.getWidth()) * MM_PER_POINT,
          bottom - at.getHeight() * MM_PER_POINT,
          bottom,
          at.getFontSizeInPt(),
          glyph,
          at.getFont().getName(),
          at.getUnicode());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
