package storyrod.geometry;

import java.util.function.UnaryOperator;

/**
 * A stretch of a path, by exact points: so it can be moved, turned and mirrored point by point. The
 * set of segments is closed.
 */
public sealed interface Segment {
  Point from();

  Point to();

  Segment mapped(UnaryOperator<Point> map);

  /** A straight line. */
  record Line(Point from, Point to) implements Segment {
    @Override
    public Line mapped(UnaryOperator<Point> map) {
      return new Line(map.apply(from), map.apply(to));
    }
  }

  /** The circular arc through a point between its ends; the three do not lie on one line. */
  record Arc(Point from, Point through, Point to) implements Segment {
    @Override
    public Arc mapped(UnaryOperator<Point> map) {
      return new Arc(map.apply(from), map.apply(through), map.apply(to));
    }
  }
}
