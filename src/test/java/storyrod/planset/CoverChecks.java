package storyrod.planset;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import storyrod.planset.PdfText.Glyph;

/** The picture on the cover ends above the piece's name. */
final class CoverChecks {
  private static final int DPI = 60;

  /** How far above and below the top of the name's box the white between them may lie. */
  private static final double NEAR_MM = 3;

  private CoverChecks() {}

  static List<String> apart(FinishedPdf pdf) throws IOException {
    Glyph name =
        pdf.pages().get(1).stream().max(Comparator.comparingDouble(Glyph::size)).orElseThrow();
    try (PDDocument document = PdfText.open(pdf.bytes())) {
      BufferedImage cover = new PDFRenderer(document).renderImageWithDPI(0, DPI);
      boolean apart =
          IntStream.rangeClosed(row(name.top() - NEAR_MM), row(name.top() + NEAR_MM))
              .anyMatch(row -> FillChecks.isWhite(cover, row));
      return apart ? List.of() : List.of("the cover's picture reaches its name");
    }
  }

  private static int row(double mm) {
    return (int) Math.round(mm * DPI / 25.4);
  }
}
