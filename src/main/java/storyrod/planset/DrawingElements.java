package storyrod.planset;

import java.awt.Point;
import java.awt.geom.Point2D;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.openpdf.extend.ReplacedElement;
import org.openpdf.extend.ReplacedElementFactory;
import org.openpdf.extend.UserAgentCallback;
import org.openpdf.layout.LayoutContext;
import org.openpdf.pdf.ITextOutputDevice;
import org.openpdf.pdf.ITextReplacedElement;
import org.openpdf.render.BlockBox;
import org.openpdf.render.RenderingContext;
import org.openpdf.simple.extend.FormSubmissionListener;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfGraphics2D;
import org.openpdf.text.pdf.PdfTemplate;
import org.w3c.dom.Element;
import storyrod.drawing.Drawing;
import storyrod.drawing.Painter;

/** Puts drawings where the pages have an element of the class {@code drawing}, as vectors. */
final class DrawingElements implements ReplacedElementFactory {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double ROUNDED = 1e-3;
  private final Map<String, Drawing> drawings;

  DrawingElements(Map<String, Drawing> drawings) {
    this.drawings = drawings;
  }

  @Override
  public @Nullable ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int cssWidth, int cssHeight) {
    Element element = box.getElement();
    if (element == null || !element.getAttribute("class").equals("drawing")) {
      return null;
    }
    Drawing drawing = drawings.get(element.getAttribute("data-name"));
    if (drawing == null) {
      throw new IllegalStateException("bug: no drawing " + element.getAttribute("data-name"));
    }
    return new Painted(drawing, cssWidth, cssHeight);
  }

  @Override
  public void reset() {}

  @Override
  public void remove(Element element) {}

  @Override
  public void setFormSubmissionListener(FormSubmissionListener listener) {}

  /** A drawing in its place, in dots of the layout. */
  private final class Painted implements ITextReplacedElement {
    private final Drawing drawing;
    private final int width;
    private final int height;
    private Point location = new Point();

    Painted(Drawing drawing, int width, int height) {
      this.drawing = drawing;
      this.width = width;
      this.height = height;
    }

    @Override
    public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
      double widthPt = width / device.getDotsPerPoint();
      double heightPt = height / device.getDotsPerPoint();
      PdfContentByte page = device.getCurrentPage();
      PdfTemplate template = page.createTemplate((float) widthPt, (float) heightPt);
      paint(template);
      Point2D corner = device.getTransform().transform(location, new Point2D.Double());
      double pageHeight = context.getPage().getHeight(context) / (double) device.getDotsPerPoint();
      page.addTemplate(
          template, (float) corner.getX(), (float) (pageHeight - corner.getY() - heightPt));
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

    @Override
    public int getIntrinsicWidth() {
      return width;
    }

    @Override
    public int getIntrinsicHeight() {
      return height;
    }

    @Override
    public Point getLocation() {
      return location;
    }

    @Override
    public void setLocation(int x, int y) {
      location = new Point(x, y);
    }

    @Override
    public void detach(LayoutContext context) {}

    @Override
    public boolean isRequiresInteractivePaint() {
      return false;
    }

    @Override
    public boolean hasBaseline() {
      return false;
    }

    @Override
    public int getBaseline() {
      return 0;
    }
  }
}
