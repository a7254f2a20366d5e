package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.TemplateTile;
import storyrod.words.Words;

/** The full-size templates as an independent reader measures them on the pages of the PDF. */
class FullSizePdfTest {
  private static final double MM_PER_POINT = 25.4 / 72;
  private static final double EXACT_MM = 0.01;

  @Test
  void linesOnThePageAreTrueToAHundredthOfAMillimetre() throws IOException {
    PlanSet set = AllProjects.named("step-stool");
    byte[] pdf = new PlanSetWriter(Words.ENGLISH).write(set).get("plan-set.pdf");
    List<TemplateTile> tiles =
        set.drawings().templates().stream().flatMap(each -> each.tiles().stream()).toList();
    assertTrue(tiles.size() > 2);
    try (PDDocument document = PdfText.open(pdf)) {
      int first = last(pdf, document.getNumberOfPages()) - tiles.size();
      for (int i = 0; i < tiles.size(); i++) {
        assertTrueToScale(document, first + i, tiles.get(i));
      }
    }
  }

  /** The last page of the templates, counted from 1; what comes behind them is not theirs. */
  private static int last(byte[] pdf, int pages) {
    return IntStream.rangeClosed(1, pages)
        .filter(page -> PdfText.text(pdf, page).contains(Words.ENGLISH.say("fullsize.title")))
        .max()
        .orElseThrow();
  }

  private static void assertTrueToScale(PDDocument document, int page, TemplateTile tile)
      throws IOException {
    List<At[]> lines = new Lines(document.getPage(page)).read();
    At[] bar = withLength(lines, 100);
    withLength(lines, 4 * 25.4);
    At drawn = bar(tile.drawing());
    double dx = bar[0].x() - drawn.x();
    double dy = bar[0].y() - drawn.y();
    for (Element element : tile.drawing().elements()) {
      if (element instanceof Drawing.Group group) {
        for (Element each : group.elements()) {
          if (each instanceof Drawing.Line line) {
            for (At at : line.points()) {
              double off = nearest(lines, at.plus(dx, dy));
              assertEquals(0, off, EXACT_MM, tile.drawing().name() + " " + at);
            }
          }
        }
      }
    }
  }

  private static double nearest(List<At[]> lines, At at) {
    return lines.stream()
        .mapToDouble(line -> Math.min(line[0].distance(at), line[1].distance(at)))
        .min()
        .orElseThrow();
  }

  /** The one level line of a length. */
  private static At[] withLength(List<At[]> lines, double mm) {
    List<At[]> found =
        lines.stream()
            .filter(line -> Math.abs(line[0].y() - line[1].y()) < 1e-6)
            .filter(line -> Math.abs(line[1].x() - line[0].x() - mm) < EXACT_MM)
            .toList();
    assertEquals(1, found.size(), "lines of " + mm + " mm");
    return found.getFirst();
  }

  private static At bar(Drawing drawing) {
    for (Element element : drawing.elements()) {
      if (element instanceof Drawing.Line line
          && Math.abs(line.points().getFirst().distance(line.points().getLast()) - 100) < 1e-9) {
        return line.points().getFirst();
      }
    }
    throw new AssertionError("no bar");
  }

  /** Collects the straight lines of a page in mm, from its top left corner. */
  private static final class Lines extends PDFGraphicsStreamEngine {
    private final List<At[]> lines = new ArrayList<>();
    private Point2D now = new Point2D.Double();

    Lines(PDPage page) {
      super(page);
    }

    List<At[]> read() throws IOException {
      processPage(getPage());
      return lines;
    }

    private At mm(double x, double y) {
      double height = getPage().getMediaBox().getHeight();
      return new At(x * MM_PER_POINT, (height - y) * MM_PER_POINT);
    }

    @Override
    public void moveTo(float x, float y) {
      now = new Point2D.Double(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
      lines.add(new At[] {mm(now.getX(), now.getY()), mm(x, y)});
      now = new Point2D.Double(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      now = new Point2D.Double(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
      return now;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {}

    @Override
    public void closePath() {}

    @Override
    public void endPath() {}

    @Override
    public void strokePath() {}

    @Override
    public void fillPath(int rule) {}

    @Override
    public void fillAndStrokePath(int rule) {}

    @Override
    public void shadingFill(COSName name) {}
  }
}
