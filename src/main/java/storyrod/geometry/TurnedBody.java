package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;

/**
 * A body as a lathe turns it, with flat facets that touch its round surface: frustums of a cone,
 * one on the other, along an axis through the origin.
 */
final class TurnedBody {
  private final Vector3D along;
  private final List<Ring> rings;
  private final int sides;

  TurnedBody(Vector3D along, List<Ring> rings, int sides) {
    this.along = along;
    this.rings = rings;
    this.sides = sides;
  }

  RegionBSPTree3D tree(Precision.DoubleEquivalence precision) {
    RegionBSPTree3D body = RegionBSPTree3D.empty();
    for (int i = 1; i < rings.size(); i++) {
      if (rings.get(i).atMm() > rings.get(i - 1).atMm()) {
        body.union(frustum(rings.get(i - 1), rings.get(i), precision));
      }
    }
    return body;
  }

  private RegionBSPTree3D frustum(Ring low, Ring high, Precision.DoubleEquivalence precision) {
    List<Plane> walls = new ArrayList<>();
    walls.add(Planes.fromPointAndNormal(axis(low), along.negate(), precision));
    walls.add(Planes.fromPointAndNormal(axis(high), along, precision));
    for (int side = 0; side < sides; side++) {
      Vector3D touching = axis(low).add(out(side).multiply(low.radiusMm()));
      walls.add(Planes.fromPointAndNormal(touching, wall(low, high, side), precision));
    }
    return ConvexVolume.fromBounds(walls).toTree();
  }

  /** The seams between the facets of each frustum. */
  List<Seam> seams() {
    List<Seam> seams = new ArrayList<>();
    for (int i = 1; i < rings.size(); i++) {
      Ring low = rings.get(i - 1);
      Ring high = rings.get(i);
      for (int side = 0; side < sides && high.atMm() > low.atMm(); side++) {
        seams.add(
            new Seam(
                corner(low, side),
                corner(high, side),
                wall(low, high, side),
                wall(low, high, side + 1)));
      }
    }
    return seams;
  }

  private Vector3D axis(Ring ring) {
    return along.multiply(ring.atMm());
  }

  private Vector3D corner(Ring ring, int side) {
    return axis(ring)
        .add(out(side + 0.5).multiply(ring.radiusMm() / StrictMath.cos(StrictMath.PI / sides)));
  }

  private Vector3D wall(Ring low, Ring high, int side) {
    return out(side)
        .multiply(high.atMm() - low.atMm())
        .add(along.multiply(low.radiusMm() - high.radiusMm()))
        .normalize();
  }

  private Vector3D out(double side) {
    double turn = 2 * StrictMath.PI * side / sides;
    Vector3D one = along.orthogonal();
    return one.multiply(StrictMath.cos(turn)).add(along.cross(one).multiply(StrictMath.sin(turn)));
  }
}
