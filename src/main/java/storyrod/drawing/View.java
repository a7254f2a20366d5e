package storyrod.drawing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * An orthographic view: points are projected along a direction onto a plane at right angles to it.
 *
 * @param right a unit vector that runs right on the paper
 * @param up a unit vector that runs up on the paper
 * @param toViewer a unit vector from the piece to the viewer
 */
record View(Vector3D right, Vector3D up, Vector3D toViewer) {
  private static final Vector3D Z = Vector3D.of(0, 0, 1);

  private static final Map<Face, View> AT = at();

  /** The usual view: from the front, the right and above. */
  public static final View USUAL = isometric(1, -1, 1);

  /** From the corners, the usual one first: four from above, four from below. */
  static final List<View> AROUND =
      List.of(
          USUAL,
          isometric(-1, -1, 1),
          isometric(1, 1, 1),
          isometric(-1, 1, 1),
          isometric(1, -1, -1),
          isometric(-1, -1, -1),
          isometric(1, 1, -1),
          isometric(-1, 1, -1));

  /**
   * An isometric view as in ISO 5456-3: the three axes of the piece are foreshortened alike.
   *
   * @param x 1 to look from the right, -1 from the left
   * @param y 1 to look from the back, -1 from the front
   * @param z 1 to look from above, -1 from below
   */
  public static View isometric(int x, int y, int z) {
    return along(Vector3D.of(x, y, z));
  }

  /** A view straight at a face; seen from above or below, the back of the piece is up. */
  public static View at(Face face) {
    return AT.get(face);
  }

  private static Map<Face, View> at() {
    Map<Face, View> at = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      Vector3D up = face.axis() == Axis.Z ? Vector3D.of(0, 1, 0) : Z;
      at.put(face, withUp(face.normal(), up));
    }
    return at;
  }

  /** A view from any direction that is not vertical; z is up on the paper. */
  public static View along(Vector3D toViewer) {
    return withUp(toViewer, Z);
  }

  private static View withUp(Vector3D toViewer, Vector3D roughlyUp) {
    Vector3D back = toViewer.normalize();
    Vector3D right = roughlyUp.cross(back).normalize();
    return new View(right, back.cross(right), back);
  }

  /** The same view of the piece when it is laid on a face: as it lies, what was up is not. */
  View laidOn(Face down) {
    return new View(turned(right, down), turned(up, down), turned(toViewer, down));
  }

  /** A direction seen on the piece as it lies, on the piece as it stands. */
  private static Vector3D turned(Vector3D lying, Face down) {
    return switch (down) {
      case BOTTOM -> lying;
      case TOP -> Vector3D.of(lying.getX(), -lying.getY(), -lying.getZ());
      case BACK -> Vector3D.of(lying.getX(), -lying.getZ(), lying.getY());
      case FRONT -> Vector3D.of(lying.getX(), lying.getZ(), -lying.getY());
      case LEFT -> Vector3D.of(lying.getZ(), lying.getY(), -lying.getX());
      case RIGHT -> Vector3D.of(-lying.getZ(), lying.getY(), lying.getX());
    };
  }

  /** Where a point of the piece lies, at full size: x runs right, y runs down. */
  public At project(Vector3D point) {
    return new At(point.dot(right), -point.dot(up));
  }
}
