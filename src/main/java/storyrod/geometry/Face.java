package storyrod.geometry;

import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A face of a part in the frame of the piece. */
public enum Face {
  LEFT(Axis.X, -1),
  RIGHT(Axis.X, 1),
  FRONT(Axis.Y, -1),
  BACK(Axis.Y, 1),
  BOTTOM(Axis.Z, -1),
  TOP(Axis.Z, 1);

  private final Axis axis;
  private final int sign;

  Face(Axis axis, int sign) {
    this.axis = axis;
    this.sign = sign;
  }

  public Axis axis() {
    return axis;
  }

  /** +1 where the face looks along its axis, -1 where it looks against it. */
  public int sign() {
    return sign;
  }

  /** The unit vector along which it looks. */
  public Vector3D normal() {
    return switch (axis) {
      case X -> Vector3D.of(sign, 0, 0);
      case Y -> Vector3D.of(0, sign, 0);
      case Z -> Vector3D.of(0, 0, sign);
    };
  }

  /** The face whose direction is nearest to another one. */
  public static Face nearest(Vector3D direction) {
    Face best = LEFT;
    for (Face face : values()) {
      if (face.normal().dot(direction) > best.normal().dot(direction) + 1e-9) {
        best = face;
      }
    }
    return best;
  }

  public Face opposite() {
    return of(axis, -sign);
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Face of(Axis axis, int sign) {
    return values()[2 * axis.ordinal() + (sign < 0 ? 0 : 1)];
  }

  public static Optional<Face> named(String word) {
    return java.util.Arrays.stream(values()).filter(face -> face.word().equals(word)).findFirst();
  }
}
