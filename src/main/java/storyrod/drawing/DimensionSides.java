package storyrod.drawing;

import java.util.Arrays;
import java.util.List;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/** On which side of a view a dimension stands, and from which points on that side it is taken. */
record DimensionSides(FlatPart flat) {
  static List<Axis> inPlane(Face view) {
    return Arrays.stream(Axis.values()).filter(axis -> axis != view.axis()).toList();
  }

  /** Where a dimension stands: near what it measures, never between two views of an edge. */
  Side side(Face view, Axis measured, Point near) {
    boolean right = near.x().times(2).isLongerThan(flat.size(Axis.X));
    boolean low = near.z().times(2).isShorterThan(flat.size(Axis.Z));
    return switch (view) {
      case FRONT, BACK ->
          measured == Axis.X ? (low ? Side.BELOW : Side.ABOVE) : (right ? Side.RIGHT : Side.LEFT);
      case RIGHT -> measured == Axis.Z ? Side.RIGHT : Side.BELOW;
      case LEFT -> measured == Axis.Z ? Side.LEFT : Side.BELOW;
      case TOP -> measured == Axis.X ? Side.ABOVE : right ? Side.RIGHT : Side.LEFT;
      case BOTTOM -> measured == Axis.X ? Side.BELOW : right ? Side.RIGHT : Side.LEFT;
    };
  }

  /** A corner of a cut on the side where its dimensions stand. */
  Point corner(Face view, Box removed) {
    Point middle = removed.middle();
    Point corner = middle;
    for (Axis axis : inPlane(view)) {
      Axis measured = Axis.other(view.axis(), axis);
      Side side = side(view, measured, middle);
      boolean high = side == highSide(view, axis);
      corner = corner.with(axis, removed.on(axis).end(high ? 1 : -1));
    }
    return corner;
  }

  /** The point of the part's outline from which a place is measured, on the dimension's side. */
  Point edge(Face view, Axis axis, Point near, Length at) {
    Axis other = Axis.other(view.axis(), axis);
    boolean high = side(view, axis, near) == highSide(view, other);
    return near.with(axis, at).with(other, high ? flat.size(other) : Length.ZERO);
  }

  /** The side of a view towards which an axis grows. */
  private static Side highSide(Face view, Axis axis) {
    return switch (axis) {
      case X -> Side.RIGHT;
      case Z -> Side.ABOVE;
      case Y ->
          switch (view) {
            case RIGHT -> Side.RIGHT;
            case LEFT -> Side.LEFT;
            case TOP -> Side.ABOVE;
            default -> Side.BELOW;
          };
    };
  }
}
