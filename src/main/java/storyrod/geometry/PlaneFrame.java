package storyrod.geometry;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;

/** A plane with two axes in it that make a right-handed frame with its normal. */
record PlaneFrame(Vector3D normal, double offset, Vector3D across, Vector3D up) {
  private static final double SAME_DIRECTION = 1e-9;
  private static final double SAME_OFFSET_MM = 1e-5;

  /** The plane of all points whose product with a unit normal is the offset in mm. */
  static PlaneFrame of(Vector3D normal, double offset) {
    Vector3D across = normal.orthogonal();
    return new PlaneFrame(normal, offset, across, normal.cross(across));
  }

  boolean isSame(Vector3D otherNormal, double otherOffset) {
    return Math.abs(otherOffset - offset) < SAME_OFFSET_MM
        && normal.subtract(otherNormal).normSq() < SAME_DIRECTION;
  }

  Coordinate flat(Vector3D point) {
    return new Coordinate(point.dot(across), point.dot(up));
  }

  Vector3D lifted(Coordinate flat) {
    return normal.multiply(offset).add(across.multiply(flat.x)).add(up.multiply(flat.y));
  }
}
