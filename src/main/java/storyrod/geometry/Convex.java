package storyrod.geometry;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A convex body that knows its own point nearest to any other, in mm: a box along the axes or a
 * round rod. Whether several of them share a point is found by going from one to the next.
 */
public sealed interface Convex {
  /** How near to all of them a point has to come to count as shared, in mm. */
  double SHARED_MM = 1e-3;

  /** Below this, in mm, another round brings nothing: the bodies stay apart. */
  double STANDSTILL_MM = 1e-7;

  int MOST_ROUNDS = 500;

  /** Its own point that is nearest to another; that point itself if it lies in the body. */
  Vector3D nearest(Vector3D to);

  /** What is left of it if its whole surface moves inwards. */
  Convex shrunk(double byMm);

  /** Whether nothing is left of it. */
  boolean isEmpty();

  /** The least box round it. */
  Brick around();

  static Convex of(Box box) {
    return new Brick(
        box.low().toMm(),
        Vector3D.of(box.x().to().toMm(), box.y().to().toMm(), box.z().to().toMm()));
  }

  /**
   * Whether some bodies share a point, each within 1 µm. A point is moved to the nearest one of
   * each body in turn: so it runs into their common space, or comes to a standstill outside.
   */
  static boolean meet(List<Convex> bodies) {
    if (bodies.stream().anyMatch(Convex::isEmpty)) {
      return false;
    }
    Vector3D at = bodies.getFirst().nearest(Vector3D.ZERO);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Vector3D before = at;
      for (Convex body : bodies) {
        at = body.nearest(at);
      }
      if (off(bodies, at) < SHARED_MM) {
        return true;
      }
      if (at.distance(before) < STANDSTILL_MM) {
        return false;
      }
    }
    return false;
  }

  private static double off(List<Convex> bodies, Vector3D at) {
    return bodies.stream().mapToDouble(body -> body.nearest(at).distance(at)).max().orElse(0);
  }

  /** A box along the axes, by its lowest and its highest corner. */
  record Brick(Vector3D low, Vector3D high) implements Convex {
    @Override
    public Vector3D nearest(Vector3D to) {
      return Vector3D.of(
          Math.clamp(to.getX(), low.getX(), high.getX()),
          Math.clamp(to.getY(), low.getY(), high.getY()),
          Math.clamp(to.getZ(), low.getZ(), high.getZ()));
    }

    @Override
    public Brick shrunk(double byMm) {
      Vector3D by = Vector3D.of(byMm, byMm, byMm);
      return new Brick(low.add(by), high.subtract(by));
    }

    @Override
    public boolean isEmpty() {
      Vector3D size = high.subtract(low);
      return Stream.of(size.getX(), size.getY(), size.getZ()).anyMatch(each -> each <= 0);
    }

    @Override
    public Brick around() {
      return this;
    }

    /** Whether two boxes share more than a face. */
    public boolean overlaps(Brick other) {
      return low.getX() < other.high.getX()
          && other.low.getX() < high.getX()
          && low.getY() < other.high.getY()
          && other.low.getY() < high.getY()
          && low.getZ() < other.high.getZ()
          && other.low.getZ() < high.getZ();
    }
  }

  /** A round rod, as it fills a bore. */
  record Rod(Cylinder bore) implements Convex {
    @Override
    public Vector3D nearest(Vector3D to) {
      Vector3D from = to.subtract(bore.mouth());
      double along = from.dot(bore.direction());
      Vector3D out = from.subtract(bore.direction().multiply(along));
      double away = out.norm();
      Vector3D held = away > bore.radiusMm() ? out.multiply(bore.radiusMm() / away) : out;
      double kept = Math.clamp(along, 0, bore.depthMm());
      return bore.mouth().add(bore.direction().multiply(kept)).add(held);
    }

    @Override
    public Rod shrunk(double byMm) {
      return new Rod(
          new Cylinder(
              bore.mouth().add(bore.direction().multiply(byMm)),
              bore.direction(),
              bore.radiusMm() - byMm,
              bore.depthMm() - 2 * byMm));
    }

    @Override
    public boolean isEmpty() {
      return bore.radiusMm() <= 0 || bore.depthMm() <= 0;
    }

    @Override
    public Brick around() {
      Vector3D one = bore.mouth();
      Vector3D other = bore.end();
      Vector3D round = Vector3D.of(radius(0), radius(1), radius(2));
      Vector3D low =
          Vector3D.of(
              Math.min(one.getX(), other.getX()),
              Math.min(one.getY(), other.getY()),
              Math.min(one.getZ(), other.getZ()));
      Vector3D high = one.add(other).subtract(low);
      return new Brick(low.subtract(round), high.add(round));
    }

    /** How far its round ends reach on an axis, by the part of the axis that lies across it. */
    private double radius(int axis) {
      double along = bore.direction().toArray()[axis];
      return bore.radiusMm() * StrictMath.sqrt(Math.max(0, 1 - along * along));
    }
  }
}
