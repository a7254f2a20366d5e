package storyrod.drawing;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;

/** A rectangle on the paper, in mm; y runs down. */
record Bounds(double left, double top, double right, double bottom) {
  static final Bounds NONE =
      new Bounds(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  static final Bounds ALL =
      new Bounds(
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY);

  static Bounds around(List<At> points) {
    return new Bounds(
        points.stream().mapToDouble(At::x).min().orElse(0),
        points.stream().mapToDouble(At::y).min().orElse(0),
        points.stream().mapToDouble(At::x).max().orElse(0),
        points.stream().mapToDouble(At::y).max().orElse(0));
  }

  static Bounds of(At one, At other) {
    return new Bounds(
        Math.min(one.x(), other.x()),
        Math.min(one.y(), other.y()),
        Math.max(one.x(), other.x()),
        Math.max(one.y(), other.y()));
  }

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
    return new Bounds(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** With another if that reaches into a strip of the paper. */
  Bounds withIn(boolean stripOfX, double from, double to, Bounds other) {
    boolean inside =
        stripOfX
            ? other.left <= to && other.right >= from
            : other.top <= to && other.bottom >= from;
    return inside ? with(other) : this;
  }

  /** What it shares with another; its sides are crossed where that is nothing. */
  Bounds within(Bounds other) {
    return new Bounds(
        Math.max(left, other.left),
        Math.max(top, other.top),
        Math.min(right, other.right),
        Math.min(bottom, other.bottom));
  }

  boolean isIn(Bounds other) {
    return left >= other.left && top >= other.top && right <= other.right && bottom <= other.bottom;
  }

  boolean overlaps(Bounds other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean contains(At at) {
    return at.x() >= left && at.x() <= right && at.y() >= top && at.y() <= bottom;
  }

  Bounds widened(double by) {
    return new Bounds(left - by, top - by, right + by, bottom + by);
  }

  /** Its corners, from the upper left one to the right and round. */
  List<At> corners() {
    return List.of(
        new At(left, top), new At(right, top), new At(right, bottom), new At(left, bottom));
  }

  /** The way round it, back to where it begins. */
  List<At> outline() {
    return Stream.concat(corners().stream(), Stream.of(new At(left, top))).toList();
  }

  /** Its four sides; none where it holds nothing. */
  List<TruePath> sides() {
    List<At> round = outline();
    return equals(NONE)
        ? List.of()
        : IntStream.range(0, 4)
            .mapToObj(i -> TruePath.line(round.get(i), round.get(i + 1)))
            .toList();
  }

  At middle() {
    return new At((left + right) / 2, (top + bottom) / 2);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }
}
