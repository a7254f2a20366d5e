package storyrod.planset;

import java.util.Optional;
import storyrod.drawing.Drawing;
import storyrod.drawing.Scale;

/**
 * The place that a drawing takes on a page.
 *
 * @param name the key under which the drawing is painted
 * @param scale the true scale on this paper; empty where the drawing was shrunk to fit
 */
public record DrawingBox(String name, double widthMm, double heightMm, Optional<Scale> scale) {
  /** A drawing on an upright page or a turned one, as its width asks, with other things beside. */
  static DrawingBox beside(double besideMm, String name, Drawing drawing, Paper paper) {
    Paper sheet = paper.with(drawing);
    return within(name, drawing, sheet.textWidthMm(), sheet.roomMm() - besideMm);
  }

  /** A drawing at its own size, or shrunk where the place is smaller. */
  static DrawingBox within(String name, Drawing drawing, double widthMm, double heightMm) {
    double fit = Math.min(widthMm / drawing.widthMm(), heightMm / drawing.heightMm());
    return fit >= 1
        ? new DrawingBox(name, drawing.widthMm(), drawing.heightMm(), drawing.scale())
        : new DrawingBox(name, drawing.widthMm() * fit, drawing.heightMm() * fit, Optional.empty());
  }
}
