package storyrod.planset;

import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfGraphics2D;
import org.openpdf.text.pdf.PdfTemplate;
import storyrod.drawing.Drawing;
import storyrod.drawing.Painter;

/** A drawing in its place, as vectors. */
final class Painted extends PlacedPicture {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double ROUNDED = 1e-3;

  private final Drawing drawing;

  Painted(Drawing drawing, Size size) {
    super(size);
    this.drawing = drawing;
  }

  @Override
  void paint(PdfContentByte page, Place place) {
    PdfTemplate template = page.createTemplate(place.width(), place.height());
    paint(template);
    page.addTemplate(template, place.x(), place.y());
  }

  private void paint(PdfTemplate template) {
    PdfGraphics2D graphics =
        new PdfGraphics2D(
            template,
            template.getWidth(),
            template.getHeight(),
            PdfFonts.mapper(),
            false,
            false,
            0);
    double fit = exact(template.getWidth() / (drawing.widthMm() * POINTS_PER_MM));
    double unit = fit * POINTS_PER_MM / Painter.UNITS_PER_MM;
    graphics.scale(unit, unit);
    Painter.paint(drawing, graphics);
    graphics.dispose();
  }

  /** A place is rounded to the dots of the layout; what is drawn in it keeps its size. */
  private static double exact(double fit) {
    return Math.abs(fit - 1) < ROUNDED ? 1 : fit;
  }
}
