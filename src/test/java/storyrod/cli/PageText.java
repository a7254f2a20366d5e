package storyrod.cli;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/**
 * All text of a document. The stripper takes the letters of a word that does not run level for
 * lines of their own; here they follow each other as they are printed.
 */
final class PageText extends PDFTextStripper {
  private final StringBuilder turned = new StringBuilder();
  private double endX;
  private double endY;

  private PageText() {}

  static String of(PDDocument document) throws IOException {
    PageText stripper = new PageText();
    String level = stripper.getText(document);
    return level + "\n" + stripper.turned;
  }

  @Override
  protected void processTextPosition(TextPosition letter) {
    Matrix way = letter.getTextMatrix();
    if (way.getShearY() == 0) {
      super.processTextPosition(letter);
      return;
    }
    double size = Math.hypot(way.getScaleX(), way.getShearY());
    double gap = Math.hypot(way.getTranslateX() - endX, way.getTranslateY() - endY);
    turned.append(gap > size / 5 ? " " : "").append(letter.getUnicode());
    double width = letter.getWidthDirAdj() / size;
    endX = way.getTranslateX() + width * way.getScaleX();
    endY = way.getTranslateY() + width * way.getShearY();
  }
}
