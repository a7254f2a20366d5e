package storyrod.planset;

import java.awt.Point;
import java.awt.geom.Point2D;
import org.openpdf.layout.LayoutContext;
import org.openpdf.pdf.ITextOutputDevice;
import org.openpdf.pdf.ITextReplacedElement;
import org.openpdf.render.BlockBox;
import org.openpdf.render.RenderingContext;
import org.openpdf.text.pdf.PdfContentByte;

/** Something that is no text in its place on a page. */
abstract class PlacedPicture implements ITextReplacedElement {
  private final Size size;
  private Point location = new Point();

  PlacedPicture(Size size) {
    this.size = size;
  }

  /** In dots of the layout. */
  record Size(int width, int height) {}

  /** A rectangle of the page, in points from its lower left corner. */
  record Place(float x, float y, float width, float height) {}

  /** Puts it into its place. */
  abstract void paint(PdfContentByte page, Place place);

  @Override
  public final void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
    double widthPt = size.width() / device.getDotsPerPoint();
    double heightPt = size.height() / device.getDotsPerPoint();
    Point2D corner = device.getTransform().transform(location, new Point2D.Double());
    double pageHeight = context.getPage().getHeight(context) / (double) device.getDotsPerPoint();
    double y = pageHeight - corner.getY() - heightPt;
    paint(
        device.getCurrentPage(),
        new Place((float) corner.getX(), (float) y, (float) widthPt, (float) heightPt));
  }

  @Override
  public final int getIntrinsicWidth() {
    return size.width();
  }

  @Override
  public final int getIntrinsicHeight() {
    return size.height();
  }

  @Override
  public final Point getLocation() {
    return location;
  }

  @Override
  public final void setLocation(int x, int y) {
    location = new Point(x, y);
  }

  @Override
  public final void detach(LayoutContext context) {}

  @Override
  public final boolean isRequiresInteractivePaint() {
    return false;
  }

  @Override
  public final boolean hasBaseline() {
    return false;
  }

  @Override
  public final int getBaseline() {
    return 0;
  }
}
