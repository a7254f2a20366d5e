package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.EmbeddingPlane;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.numbers.core.Precision;
import storyrod.geometry.Contour.Vertex;

/**
 * A contour pulled out along its normal: a body with flat facets for its arcs, and the seams
 * between them.
 */
final class Facets {
  private static final int SIDES = 32;

  private final Contour contour;
  private final Range along;
  private final List<Vertex> vertices;

  Facets(Contour contour, Range along, Fineness fineness) {
    this.contour = contour;
    this.along = along;
    this.vertices = contour.drawn(fineness.sagittaMm(), fineness.most());
  }

  RegionBSPTree3D tree(Precision.DoubleEquivalence precision) {
    Vector3D across = unit(contour.across());
    Vector3D up = unit(contour.up());
    Vector3D out = across.cross(up);
    boolean positive = out.dot(unit(contour.normal())) > 0;
    double start = (positive ? along.from() : along.to()).toMm();
    Vector3D origin = unit(contour.normal()).multiply(start);
    EmbeddingPlane plane = Planes.fromPointAndPlaneVectors(origin, across, up, precision);
    List<Vector2D> loop =
        vertices.stream().map(v -> plane.toSubspace(lifted(v.at(), start))).toList();
    Vector3D way = out.multiply(along.length().toMm());
    return RegionBSPTree3D.from(Planes.extrudeVertexLoop(loop, plane, way, precision), true);
  }

  /** A prism of {@value #SIDES} sides round a bore, each of which touches it. */
  static RegionBSPTree3D around(Cylinder bore, Precision.DoubleEquivalence precision) {
    Vector3D one = bore.direction().orthogonal();
    Vector3D other = bore.direction().cross(one);
    List<Plane> walls = new ArrayList<>();
    walls.add(Planes.fromPointAndNormal(bore.mouth(), bore.direction().negate(), precision));
    walls.add(Planes.fromPointAndNormal(bore.end(), bore.direction(), precision));
    for (int side = 0; side < SIDES; side++) {
      double turn = 2 * StrictMath.PI * side / SIDES;
      Vector3D out = one.multiply(StrictMath.cos(turn)).add(other.multiply(StrictMath.sin(turn)));
      Vector3D wall = bore.mouth().add(out.multiply(bore.radiusMm()));
      walls.add(Planes.fromPointAndNormal(wall, out, precision));
    }
    return ConvexVolume.fromBounds(walls).toTree();
  }

  List<Seam> seams() {
    List<Seam> seams = new ArrayList<>();
    int count = vertices.size();
    for (int i = 0; i < count; i++) {
      if (vertices.get(i).smooth()) {
        Vector2D at = vertices.get(i).at();
        Vector2D before = vertices.get((i + count - 1) % count).at();
        Vector2D after = vertices.get((i + 1) % count).at();
        seams.add(
            new Seam(
                lifted(at, along.from().toMm()),
                lifted(at, along.to().toMm()),
                wall(before, at),
                wall(at, after)));
      }
    }
    return seams;
  }

  private Vector3D wall(Vector2D from, Vector2D to) {
    Vector2D run = to.subtract(from);
    return unit(contour.across())
        .multiply(run.getY())
        .subtract(unit(contour.up()).multiply(run.getX()))
        .normalize();
  }

  private Vector3D lifted(Vector2D at, double onNormal) {
    return unit(contour.across())
        .multiply(at.getX())
        .add(unit(contour.up()).multiply(at.getY()))
        .add(unit(contour.normal()).multiply(onNormal));
  }

  private static Vector3D unit(Axis axis) {
    return switch (axis) {
      case X -> Vector3D.of(1, 0, 0);
      case Y -> Vector3D.of(0, 1, 0);
      case Z -> Vector3D.of(0, 0, 1);
    };
  }
}
