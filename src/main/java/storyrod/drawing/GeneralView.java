package storyrod.drawing;

import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;

/**
 * A view of several parts in their places.
 *
 * @param box the box round all that is shown
 */
record GeneralView(Face face, Box box, Fit fit) implements ViewOnPaper {
  /** At a scale, its top left corner at a point of the paper. */
  static GeneralView at(Elevation view, double factor, At corner) {
    Face face = view.face();
    Fit still = new Fit(factor, 0, 0, view.isTurned());
    Bounds plain = new GeneralView(face, view.box(), still).bounds();
    double dx = corner.x() - plain.left();
    double dy = corner.y() - plain.top();
    return new GeneralView(face, view.box(), new Fit(factor, dx, dy, view.isTurned()));
  }

  @Override
  public Axis across() {
    return fit.turned() ? ViewOnPaper.super.upright() : ViewOnPaper.super.across();
  }

  @Override
  public Axis upright() {
    return fit.turned() ? ViewOnPaper.super.across() : ViewOnPaper.super.upright();
  }

  @Override
  public At at(Point point) {
    return fit.on(View.at(face).project(point.toMm()));
  }

  @Override
  public Bounds bounds() {
    return Bounds.NONE
        .with(at(box.low()))
        .with(at(new Point(box.x().to(), box.y().to(), box.z().to())));
  }

  @Override
  public double factor() {
    return fit.factor();
  }

  @Override
  public boolean shows(Point point) {
    return true;
  }
}
