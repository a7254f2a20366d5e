package storyrod.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A convex body by its faces, for volumes that two bodies share. Faces that nearly coincide, as
 * slanted ones do once points are rounded, cannot break it: it clips face by face and never asks
 * whether two planes are one.
 */
record ConvexBody(List<Side> sides) {
  private static final double LEAST_MM = 1e-9;

  ConvexBody {
    sides = List.copyOf(sides);
  }

  /** A flat side: its unit normal out of the body and its corners in order. */
  record Side(Vector3D normal, List<Vector3D> corners) {
    double offset() {
      return corners.getFirst().dot(normal);
    }
  }

  static ConvexBody of(ConvexVolume volume) {
    List<Side> sides = new ArrayList<>();
    for (PlaneConvexSubset side : volume.getBoundaries()) {
      sides.add(new Side(side.getPlane().getNormal(), side.getVertices()));
    }
    return new ConvexBody(sides);
  }

  /** The volume in mm³ that is left of it within another one, which is moved first. */
  double sharedMm3(ConvexBody other, Vector3D moved) {
    if (isBesides(other, moved)) {
      return 0;
    }
    ConvexBody left = this;
    for (Side side : other.sides) {
      left = left.behind(side.normal, side.offset() + moved.dot(side.normal));
      if (left.sides.size() < 4) {
        return 0;
      }
    }
    return left.volumeMm3();
  }

  /** Whether one of its own sides has all of another one, which is moved first, before it. */
  private boolean isBesides(ConvexBody other, Vector3D moved) {
    return sides.stream()
        .anyMatch(side -> other.isBefore(side.normal, side.offset() - moved.dot(side.normal)));
  }

  private boolean isBefore(Vector3D normal, double offset) {
    for (Side side : sides) {
      for (Vector3D corner : side.corners) {
        if (corner.dot(normal) <= offset) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean isBehind(Vector3D normal, double offset) {
    for (Side side : sides) {
      for (Vector3D corner : side.corners) {
        if (corner.dot(normal) - offset > 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** What of it lies behind a plane. */
  private ConvexBody behind(Vector3D normal, double offset) {
    if (isBehind(normal, offset)) {
      return this;
    }
    List<Side> kept = new ArrayList<>();
    List<Vector3D> cut = new ArrayList<>();
    for (Side side : sides) {
      List<Vector3D> corners = behind(side.corners, normal, offset, cut);
      if (corners.size() > 2) {
        kept.add(new Side(side.normal, corners));
      }
    }
    if (kept.size() < sides.size() || !cut.isEmpty()) {
      cap(cut, normal).ifPresent(kept::add);
    }
    return new ConvexBody(kept);
  }

  private static List<Vector3D> behind(
      List<Vector3D> ring, Vector3D normal, double offset, List<Vector3D> cut) {
    List<Vector3D> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Vector3D one = ring.get(i);
      Vector3D two = ring.get((i + 1) % ring.size());
      double from = one.dot(normal) - offset;
      double to = two.dot(normal) - offset;
      if (from <= 0) {
        kept.add(one);
      }
      if (from <= 0 != to <= 0) {
        Vector3D crossing = one.lerp(two, from / (from - to));
        kept.add(crossing);
        cut.add(crossing);
      }
    }
    return kept;
  }

  /** The side along the cut: its corners in order round their middle. */
  private static java.util.Optional<Side> cap(List<Vector3D> corners, Vector3D normal) {
    if (corners.size() < 3) {
      return java.util.Optional.empty();
    }
    Vector3D middle =
        corners.stream().reduce(Vector3D.ZERO, Vector3D::add).multiply(1.0 / corners.size());
    Vector3D across = normal.orthogonal();
    Vector3D up = normal.cross(across);
    List<Vector3D> ordered =
        corners.stream()
            .filter(corner -> corner.distance(middle) > LEAST_MM)
            .sorted(
                Comparator.comparingDouble(
                    corner -> {
                      Vector3D out = corner.subtract(middle);
                      return StrictMath.atan2(out.dot(up), out.dot(across));
                    }))
            .toList();
    return ordered.size() < 3
        ? java.util.Optional.empty()
        : java.util.Optional.of(new Side(normal, ordered));
  }

  /** By the divergence theorem, as cones from one of its corners. */
  private double volumeMm3() {
    Vector3D apex = sides.getFirst().corners.getFirst();
    double volume = 0;
    for (Side side : sides) {
      volume += area(side) * side.corners.getFirst().subtract(apex).dot(side.normal) / 3;
    }
    return Math.max(0, volume);
  }

  private static double area(Side side) {
    Vector3D first = side.corners.getFirst();
    Vector3D sum = Vector3D.ZERO;
    for (int i = 1; i + 1 < side.corners.size(); i++) {
      Vector3D one = side.corners.get(i).subtract(first);
      Vector3D two = side.corners.get(i + 1).subtract(first);
      sum = sum.add(one.cross(two));
    }
    return sum.norm() / 2;
  }
}
