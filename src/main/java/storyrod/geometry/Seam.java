package storyrod.geometry;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A line where two facets of one curved surface meet, in mm: a drawing shows it only where the
 * surface turns out of sight.
 *
 * @param one the direction in which the facet on one side looks
 * @param other the direction in which the facet on the other side looks
 */
public record Seam(Vector3D from, Vector3D to, Vector3D one, Vector3D other) {
  private static final double ON_IT_MM = 0.002;

  /** The sine of an angle to the line of sight at which a facet is still seen from its edge. */
  private static final double EDGE_ON = 1e-6;

  /** What lies on it is no farther from the box round it: beyond an end and beside it. */
  private static final double NEAR_IT_MM = 2 * ON_IT_MM;

  Seam moved(Vector3D by) {
    return new Seam(from.add(by), to.add(by), one, other);
  }

  Seam posed(Pose pose) {
    return new Seam(pose.point(from), pose.point(to), pose.direction(one), pose.direction(other));
  }

  /** Whether a viewer in some direction sees both facets, or neither: one seen edge on is not. */
  public boolean isSmooth(Vector3D toViewer) {
    return one.dot(toViewer) > EDGE_ON == other.dot(toViewer) > EDGE_ON;
  }

  /** Whether a point lies on it. */
  public boolean holds(Vector3D point) {
    return isIn(point.getX(), from.getX(), to.getX())
        && isIn(point.getY(), from.getY(), to.getY())
        && isIn(point.getZ(), from.getZ(), to.getZ())
        && isOn(point);
  }

  /** Most points lie far off, which their coordinates tell at once. */
  private static boolean isIn(double at, double from, double to) {
    return at >= Math.min(from, to) - NEAR_IT_MM && at <= Math.max(from, to) + NEAR_IT_MM;
  }

  private boolean isOn(Vector3D point) {
    Vector3D run = to.subtract(from);
    double share = point.subtract(from).dot(run) / run.normSq();
    double slack = ON_IT_MM / run.norm();
    return share > -slack
        && share < 1 + slack
        && point.distance(from.add(run.multiply(share))) < ON_IT_MM;
  }
}
