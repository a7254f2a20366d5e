package storyrod.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What two faces share when the other is laid flat in the plane of the one. */
final class FacesTouching {
  private static final GeometryFactory FACTORY = new GeometryFactory(new PrecisionModel(1e8));
  private static final double LEAST_MM2 = 0.01;

  private final PlaneFrame frame;
  private final FlatFace one;
  private final FlatFace other;

  FacesTouching(FlatFace one, FlatFace other) {
    this.frame = one.frame();
    this.one = one;
    this.other = other;
  }

  double areaMm2() {
    return both().getArea();
  }

  private Geometry both() {
    return OverlayNGRobust.overlay(
        polygon(one, frame), polygon(other, frame), OverlayNG.INTERSECTION);
  }

  Optional<FlatFace> shared() {
    Geometry both = both();
    return IntStream.range(0, both.getNumGeometries())
        .mapToObj(both::getGeometryN)
        .filter(Polygon.class::isInstance)
        .map(Polygon.class::cast)
        .filter(each -> each.getArea() > LEAST_MM2)
        .max(Comparator.comparingDouble(Polygon::getArea))
        .map(this::lifted);
  }

  private FlatFace lifted(Polygon polygon) {
    List<List<Vector3D>> openings = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      openings.add(points(polygon.getInteriorRingN(i), false));
    }
    return new FlatFace(frame.normal(), points(polygon.getExteriorRing(), true), openings);
  }

  private List<Vector3D> points(LinearRing ring, boolean counterClockwise) {
    boolean asIs = Orientation.isCCW(ring.getCoordinates()) == counterClockwise;
    Coordinate[] corners = (asIs ? ring : ring.reverse()).getCoordinates();
    return IntStream.range(0, corners.length - 1).mapToObj(i -> frame.lifted(corners[i])).toList();
  }

  static Polygon polygon(FlatFace face, PlaneFrame frame) {
    LinearRing[] openings =
        face.openings().stream().map(ring -> ring(ring, frame)).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(ring(face.outer(), frame), openings);
  }

  private static LinearRing ring(List<Vector3D> points, PlaneFrame frame) {
    List<Coordinate> ring = new ArrayList<>(points.stream().map(frame::flat).toList());
    ring.add(ring.getFirst().copy());
    return FACTORY.createLinearRing(ring.toArray(Coordinate[]::new));
  }
}
