package storyrod.geometry;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.measure.Angle;

/**
 * How a body stands that was turned out of its own frame: about an axis through a point, by the
 * right-hand rule (about y, z turns towards x; about x, y towards z; about z, x towards y).
 *
 * @param at a point of the axis
 */
public record Pose(Axis about, Angle by, Point at) {
  /** Not turned at all. */
  public static final Pose NONE = new Pose(Axis.Z, Angle.ZERO, Point.ORIGIN);

  public boolean isTurned() {
    return !by.isZero();
  }

  /** Back from where it stands to its own frame. */
  public Pose inverse() {
    return new Pose(about, by.negated(), at);
  }

  /** Where a point goes, in mm. */
  public Vector3D point(Vector3D pointMm) {
    Vector3D pivot = at.toMm();
    return isTurned() ? direction(pointMm.subtract(pivot)).add(pivot) : pointMm;
  }

  /** Where a direction points afterwards. */
  public Vector3D direction(Vector3D direction) {
    if (!isTurned()) {
      return direction;
    }
    double x = direction.getX();
    double y = direction.getY();
    double z = direction.getZ();
    double cos = by.cos();
    double sin = by.sin();
    return switch (about) {
      case X -> Vector3D.of(x, y * cos - z * sin, y * sin + z * cos);
      case Y -> Vector3D.of(z * sin + x * cos, y, z * cos - x * sin);
      case Z -> Vector3D.of(x * cos - y * sin, x * sin + y * cos, z);
    };
  }

  /** The direction in which a face of the body looks. */
  public Vector3D normal(Face face) {
    return direction(face.normal());
  }
}
