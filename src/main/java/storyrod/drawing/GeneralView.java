package storyrod.drawing;

import storyrod.drawing.Drawing.At;
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
  static GeneralView at(Face face, Box box, double factor, At corner) {
    Bounds plain = new GeneralView(face, box, new Fit(factor, 0, 0)).bounds();
    return new GeneralView(
        face, box, new Fit(factor, corner.x() - plain.left(), corner.y() - plain.top()));
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
