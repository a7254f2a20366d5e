package storyrod.planset;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import storyrod.drawing.Drawing;
import storyrod.drawing.Fonts;

/** Drawings as two programs that know nothing of ours see them: their SVG and their PDF page. */
final class Rasters {
  static final int PIXELS_PER_MM = 6;

  static {
    for (Fonts.Weight weight : Fonts.Weight.values()) {
      GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(Fonts.awt(weight, 10));
    }
    GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(Fonts.symbols(10));
  }

  private Rasters() {}

  /** One page for each drawing, which stands in its top left corner. */
  static byte[] pdf(Map<String, Drawing> drawings) {
    StringBuilder body = new StringBuilder();
    drawings.forEach(
        (name, each) ->
            body.append(
                "<div class=\"drawing\" data-name=\"%s\" style=\"page-break-after:always;width:%smm;height:%smm\"></div>"
                    .formatted(name, each.widthMm(), each.heightMm())));
    double width = drawings.values().stream().mapToDouble(Drawing::widthMm).max().orElseThrow();
    double height = drawings.values().stream().mapToDouble(Drawing::heightMm).max().orElseThrow();
    String head =
        "<html><head><title></title><style>@page {size: %smm %smm; margin: 0} body {margin: 0}</style></head><body>"
            .formatted(width + 1, height + 1);
    return PdfPages.write(
        head + body + "</body></html>",
        drawings,
        new PdfPages.About("", "", "en", Optional.empty()));
  }

  /** What PDFBox makes of a page, as far as the drawing in its corner reaches. */
  static Raster page(PDDocument document, int page, Drawing drawing) {
    try {
      BufferedImage image =
          new PDFRenderer(document)
              .renderImageWithDPI(page, (float) (PIXELS_PER_MM * 25.4), ImageType.GRAY);
      return Raster.of(image, pixels(drawing.widthMm()), pixels(drawing.heightMm()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static int pixels(double mm) {
    return (int) Math.floor(mm * PIXELS_PER_MM);
  }

  /** What JSVG makes of a drawing's SVG. */
  static Raster svg(String svg, Drawing drawing) {
    SVGDocument document =
        new SVGLoader()
            .load(
                new ByteArrayInputStream(svg.getBytes(UTF_8)),
                URI.create("file:///none"),
                LoaderContext.createDefault());
    int width = pixels(drawing.widthMm());
    int height = pixels(drawing.heightMm());
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    document.render(
        null,
        graphics,
        new ViewBox(
            0,
            0,
            (float) (drawing.widthMm() * PIXELS_PER_MM),
            (float) (drawing.heightMm() * PIXELS_PER_MM)));
    graphics.dispose();
    return Raster.of(image, width, height);
  }
}
