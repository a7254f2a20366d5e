package storyrod.geometry;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A round bore: it starts at the centre of its mouth and runs along a direction.
 *
 * @param mouth the centre of the mouth, in mm
 * @param direction a unit vector into the wood
 * @param radiusMm the radius in mm
 * @param depthMm how far it runs along the direction, in mm
 */
public record Cylinder(Vector3D mouth, Vector3D direction, double radiusMm, double depthMm) {
  /** The centre of the far end. */
  public Vector3D end() {
    return mouth.add(direction.multiply(depthMm));
  }

  Cylinder moved(Vector3D byMm) {
    return new Cylinder(mouth.add(byMm), direction, radiusMm, depthMm);
  }

  Cylinder posed(Pose pose) {
    return new Cylinder(pose.point(mouth), pose.direction(direction), radiusMm, depthMm);
  }
}
