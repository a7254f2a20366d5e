package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A circular arc in a plane, in mm and radians.
 *
 * @param start the angle of its start, seen from the centre
 * @param sweep how far it runs from there, counter-clockwise if positive
 */
public record FlatArc(Vector2D centre, double radius, double start, double sweep) {
  private static final double FULL = 2 * Math.PI;

  /** The arc from one point through another to a third; the three do not lie on one line. */
  static FlatArc through(Vector2D from, Vector2D through, Vector2D to) {
    Vector2D a = through.subtract(from);
    Vector2D b = to.subtract(from);
    double cross = 2 * a.signedArea(b);
    if (cross == 0) {
      throw new IllegalArgumentException("bug: an arc through three points of one line");
    }
    double x = (b.getY() * a.normSq() - a.getY() * b.normSq()) / cross;
    double y = (a.getX() * b.normSq() - b.getX() * a.normSq()) / cross;
    Vector2D centre = from.add(Vector2D.of(x, y));
    double start = angle(from.subtract(centre));
    double turn = floored(angle(to.subtract(centre)) - start);
    double sweep = cross > 0 ? turn : turn - FULL;
    return new FlatArc(centre, Math.hypot(x, y), start, sweep);
  }

  private static double floored(double angle) {
    double turned = angle % FULL;
    return turned < 0 ? turned + FULL : turned;
  }

  private static double angle(Vector2D direction) {
    return StrictMath.atan2(direction.getY(), direction.getX());
  }

  /** The point at a share of the sweep. */
  public Vector2D at(double share) {
    double angle = start + share * sweep;
    return centre.add(Vector2D.of(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
  }

  /** The unit vector along which a tangent runs at a share of the sweep. */
  public Vector2D tangent(double share) {
    double angle = start + share * sweep;
    double sign = Math.signum(sweep);
    return Vector2D.of(-sign * StrictMath.sin(angle), sign * StrictMath.cos(angle));
  }

  /** The points of the arc that lie farthest out along an axis or against it, ends left out. */
  List<Vector2D> extremes() {
    List<Vector2D> found = new ArrayList<>();
    for (int quarter = 0; quarter < 4; quarter++) {
      double turn = floored(Math.signum(sweep) * (quarter * Math.PI / 2 - start));
      if (turn < Math.abs(sweep)) {
        found.add(at(turn / Math.abs(sweep)));
      }
    }
    return found;
  }

  /** Into how many equal chords it must be cut so that none is further from it than some mm. */
  int chords(double sagittaMm, int most) {
    double step = 2 * StrictMath.acos(Math.max(1 - sagittaMm / radius, 0));
    int needed = (int) Math.ceil(Math.abs(sweep) / step);
    int least = (int) Math.ceil(Math.abs(sweep) / (Math.PI / 4));
    return Math.min(Math.max(needed, least), most);
  }

  /**
   * The area between the arc and its chord in mm², positive where the arc runs counter-clockwise.
   */
  double segmentAreaMm2() {
    return radius * radius / 2 * (sweep - StrictMath.sin(sweep));
  }
}
