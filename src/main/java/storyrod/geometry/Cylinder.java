package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
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
  private static final int SIDES = 32;
  private static final double ALONG = 1e-9;

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

  /**
   * The outline of what a plane cuts of it: a rectangle where it runs along the plane, otherwise an
   * ellipse of {@value #SIDES} tangents, cut off where the plane leaves through an end.
   *
   * @param at a point of the plane, in mm
   * @param normal the plane's unit normal
   * @return no points where the plane does not meet it
   */
  public List<Vector3D> sawn(Vector3D at, Vector3D normal) {
    double slope = direction.dot(normal);
    if (Math.abs(slope) < ALONG) {
      return sawnAlong(mouth.subtract(at).dot(normal), normal);
    }
    Vector3D one = direction.orthogonal();
    Vector3D other = direction.cross(one);
    double outer = radiusMm / StrictMath.cos(StrictMath.PI / SIDES);
    List<Vector3D> ring = new ArrayList<>();
    for (int side = 0; side < SIDES; side++) {
      double turn = 2 * StrictMath.PI * side / SIDES;
      Vector3D out = one.multiply(StrictMath.cos(turn)).add(other.multiply(StrictMath.sin(turn)));
      Vector3D from = mouth.add(out.multiply(outer));
      ring.add(from.add(direction.multiply(at.subtract(from).dot(normal) / slope)));
    }
    List<Vector3D> below = keptWhere(ring, point -> point.subtract(mouth).dot(direction));
    return keptWhere(below, point -> end().subtract(point).dot(direction));
  }

  private List<Vector3D> sawnAlong(double away, Vector3D normal) {
    if (Math.abs(away) >= radiusMm) {
      return List.of();
    }
    Vector3D half = direction.cross(normal).multiply(Math.sqrt(radiusMm * radiusMm - away * away));
    Vector3D start = mouth.subtract(normal.multiply(away));
    Vector3D stop = end().subtract(normal.multiply(away));
    return List.of(start.add(half), stop.add(half), stop.subtract(half), start.subtract(half));
  }

  /** A convex ring cut off along the line where a linear function is zero. */
  private static List<Vector3D> keptWhere(List<Vector3D> ring, ToDoubleFunction<Vector3D> above) {
    List<Vector3D> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Vector3D here = ring.get(i);
      Vector3D next = ring.get((i + 1) % ring.size());
      double at = above.applyAsDouble(here);
      double then = above.applyAsDouble(next);
      if (at >= 0) {
        kept.add(here);
      }
      if (at >= 0 != then >= 0) {
        kept.add(here.lerp(next, at / (at - then)));
      }
    }
    return kept.size() < 3 ? List.of() : kept;
  }
}
