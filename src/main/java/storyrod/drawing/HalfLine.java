package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.At;

/**
 * A line from a point on in one direction. It tells apart quickly what no stretch of it can meet.
 *
 * @param to a step of 1 mm along it
 */
record HalfLine(At from, At to) {
  /** More than what rounding makes of a place on the paper, in mm. */
  private static final double ROUNDING = 1e-6;

  /** What lies nearer beside it is not told apart from it (common practice), in mm. */
  private static final double ALONG_MM = 0.7;

  At at(double away) {
    return from.plus(to.x() * away, to.y() * away);
  }

  /** Those of some lines that it may meet. */
  List<Paper.Stretch> mayMeet(List<Paper.Stretch> lines) {
    List<Paper.Stretch> near = new ArrayList<>();
    for (Paper.Stretch line : lines) {
      if (mayMeet(line)) {
        near.add(line);
      }
    }
    return near;
  }

  boolean mayMeet(Paper.Stretch line) {
    double one = beside(line.from().x(), line.from().y());
    double other = beside(line.to().x(), line.to().y());
    return Math.min(one, other) <= ROUNDING
        && Math.max(one, other) >= -ROUNDING
        && (isAhead(line.from().x(), line.from().y()) || isAhead(line.to().x(), line.to().y()));
  }

  /** Whether a line lies so near along it that the two would be taken for one. */
  boolean runsAlong(Paper.Stretch line) {
    return Math.abs(beside(line.from().x(), line.from().y())) < ALONG_MM
        && Math.abs(beside(line.to().x(), line.to().y())) < ALONG_MM;
  }

  /** How far along it a point lies, in mm; less than zero behind its start. */
  double along(At at) {
    return to.x() * (at.x() - from.x()) + to.y() * (at.y() - from.y());
  }

  boolean mayMeet(PlacedText text) {
    double x = to.y() > 0 ? text.left() : text.right();
    double y = to.x() > 0 ? text.bottom() : text.top();
    double most = beside(x, y);
    double least = beside(text.left() + text.right() - x, text.top() + text.bottom() - y);
    return least <= ROUNDING
        && most >= -ROUNDING
        && isAhead(
            to.x() > 0 ? text.right() : text.left(), to.y() > 0 ? text.bottom() : text.top());
  }

  /** How far a point lies beside it, less than zero on one side. */
  private double beside(double x, double y) {
    return to.x() * (y - from.y()) - to.y() * (x - from.x());
  }

  private boolean isAhead(double x, double y) {
    return along(new At(x, y)) >= -ROUNDING;
  }
}
