package storyrod.drawing;

import storyrod.drawing.Drawing.At;

/** A rectangle on the paper, in mm; y runs down. */
record Bounds(double left, double top, double right, double bottom) {
  static final Bounds NONE =
      new Bounds(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  static Bounds of(PlacedText text) {
    return new Bounds(text.left(), text.top(), text.right(), text.bottom());
  }

  Bounds with(double x, double y) {
    return new Bounds(Math.min(left, x), Math.min(top, y), Math.max(right, x), Math.max(bottom, y));
  }

  Bounds with(At at) {
    return with(at.x(), at.y());
  }

  Bounds with(Bounds other) {
    return with(other.left, other.top).with(other.right, other.bottom);
  }

  /** With another if that reaches into a strip of the paper. */
  Bounds withIn(boolean stripOfX, double from, double to, Bounds other) {
    boolean inside =
        stripOfX
            ? other.left <= to && other.right >= from
            : other.top <= to && other.bottom >= from;
    return inside ? with(other) : this;
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }
}
