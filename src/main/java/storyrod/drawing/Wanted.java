package storyrod.drawing;

import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * A dimension that a drawing must have.
 *
 * @param view the view it is shown in
 * @param side on which side of that view
 * @param axis what it measures along, in the frame of the flat part
 * @param from one measured point
 * @param to the other, further along the axis
 * @param farSide where on the view's other axis the same can be measured from the other side
 */
record Wanted(Face view, Side side, Axis axis, Point from, Point to, String text, Length farSide) {
  /** What is measured between the same two points from either side. */
  Wanted(Face view, Side side, Axis axis, Point from, Point to, String text) {
    this(view, side, axis, from, to, text, from.on(Axis.other(view.axis(), axis)));
  }

  /** A side of a view on the paper. */
  enum Side {
    ABOVE,
    BELOW,
    LEFT,
    RIGHT;

    Side opposite() {
      return switch (this) {
        case ABOVE -> BELOW;
        case BELOW -> ABOVE;
        case LEFT -> RIGHT;
        case RIGHT -> LEFT;
      };
    }
  }

  /** The same in a view turned by a quarter, its right above. */
  Wanted onItsSide() {
    Side turned =
        switch (side) {
          case ABOVE -> Side.LEFT;
          case BELOW -> Side.RIGHT;
          case LEFT -> Side.BELOW;
          case RIGHT -> Side.ABOVE;
        };
    return new Wanted(view, turned, axis, from, to, text, farSide);
  }

  Wanted onOtherSide() {
    Axis other = Axis.other(view.axis(), axis);
    Point one = from.with(other, farSide);
    Point two = to.with(other, farSide);
    return new Wanted(view, side.opposite(), axis, one, two, text, from.on(other));
  }

  Length measure() {
    return to.on(axis).minus(from.on(axis));
  }

  /**
   * Whether another one measures the same stretch. Lengths and widths lie in line in the face and
   * in the views beside it; a place in the thickness does so only within one view.
   */
  boolean repeats(Wanted other) {
    boolean beside = view == Face.FRONT || other.view == Face.FRONT;
    boolean inLine = view == other.view || beside && axis != Axis.Y;
    return inLine && axis == other.axis && range().equals(other.range());
  }

  Range range() {
    return new Range(from.on(axis), to.on(axis));
  }
}
