package storyrod.geometry;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.measure.Length;

/** An exact point in the frame of the piece. */
public record Point(Length x, Length y, Length z) {
  public static final Point ORIGIN = new Point(Length.ZERO, Length.ZERO, Length.ZERO);

  public Length on(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  public Point with(Axis axis, Length value) {
    return switch (axis) {
      case X -> new Point(value, y, z);
      case Y -> new Point(x, value, z);
      case Z -> new Point(x, y, value);
    };
  }

  public Point moved(Axis axis, Length by) {
    return with(axis, on(axis).plus(by));
  }

  /** The point in millimetres. */
  public Vector3D toMm() {
    return Vector3D.of(x.toMm(), y.toMm(), z.toMm());
  }
}
