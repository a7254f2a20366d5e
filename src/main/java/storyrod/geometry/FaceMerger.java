package storyrod.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Merges the convex pieces of a boundary plane by plane into faces with openings. Pieces are united
 * on a grid of 0.1 µm; corners keep the coordinates they came with.
 */
final class FaceMerger {
  private static final PrecisionModel GRID = new PrecisionModel(1e4);
  private static final GeometryFactory FACTORY = new GeometryFactory(GRID);
  private static final double STRAIGHT_MM = 2e-4;
  private static final double WIDE_MM = 1e-3;

  private static final Comparator<Vector3D> BY_COORDINATES =
      Comparator.comparingDouble((Vector3D v) -> rounded(v.getX()))
          .thenComparingDouble(v -> rounded(v.getY()))
          .thenComparingDouble(v -> rounded(v.getZ()));
  private static final Comparator<FlatFace> FIXED_ORDER =
      Comparator.comparing(FlatFace::normal, BY_COORDINATES)
          .thenComparingDouble(face -> rounded(face.outer().getFirst().dot(face.normal())))
          .thenComparing(face -> face.outer().getFirst(), BY_COORDINATES);

  private final PlaneFrame frame;
  private final List<Polygon> pieces = new ArrayList<>();
  private final Map<Coordinate, Vector3D> corners = new LinkedHashMap<>();

  private FaceMerger(PlaneFrame frame) {
    this.frame = frame;
  }

  /** The merged faces, in an order that depends only on where they lie. */
  static List<FlatFace> merge(Iterable<PlaneConvexSubset> boundary) {
    List<FaceMerger> planes = new ArrayList<>();
    for (PlaneConvexSubset piece : boundary) {
      if (piece.getVertices().size() > 2) {
        planeOf(piece, planes).add(piece.getVertices());
      }
    }
    return planes.stream().flatMap(FaceMerger::faces).sorted(FIXED_ORDER).toList();
  }

  private static FaceMerger planeOf(PlaneConvexSubset piece, List<FaceMerger> planes) {
    Vector3D normal = piece.getPlane().getNormal();
    double offset = piece.getVertices().getFirst().dot(normal);
    for (FaceMerger plane : planes) {
      if (plane.frame.isSame(normal, offset)) {
        return plane;
      }
    }
    planes.add(new FaceMerger(PlaneFrame.of(normal, offset)));
    return planes.getLast();
  }

  private void add(List<Vector3D> vertices) {
    List<Coordinate> ring = new ArrayList<>();
    for (Vector3D vertex : vertices) {
      Coordinate flat = frame.flat(vertex);
      corners.putIfAbsent(onGrid(flat), vertex);
      ring.add(flat);
    }
    ring.add(ring.getFirst());
    pieces.add(FACTORY.createPolygon(ring.toArray(Coordinate[]::new)));
  }

  private static Coordinate onGrid(Coordinate flat) {
    return new Coordinate(GRID.makePrecise(flat.x) + 0.0, GRID.makePrecise(flat.y) + 0.0);
  }

  /**
   * All pieces are united at once, from the coordinates they came with: rounded one after another,
   * corners that lie on a neighbour's side would leave cracks. Where pieces overlap by a hair that
   * fails, and they are united in pairs.
   */
  private Geometry united() {
    if (pieces.size() == 1 && isWide(pieces.getFirst())) {
      return onGrid(pieces.getFirst());
    }
    Geometry all = FACTORY.createMultiPolygon(pieces.toArray(Polygon[]::new));
    try {
      return OverlayNG.overlay(all, FACTORY.createPolygon(), OverlayNG.UNION, GRID);
    } catch (TopologyException overlapping) {
      return UnaryUnionNG.union(List.<Geometry>copyOf(pieces), GRID);
    }
  }

  /** Whether no corner of a convex piece is so near to another side that both meet on the grid. */
  private static boolean isWide(Polygon piece) {
    Coordinate[] ring = piece.getExteriorRing().getCoordinates();
    for (int i = 0; i + 1 < ring.length; i++) {
      for (int j = 0; j + 1 < ring.length; j++) {
        boolean isEnd = j == i || j == (i + 1) % (ring.length - 1);
        if (!isEnd && Distance.pointToSegment(ring[j], ring[i], ring[i + 1]) < WIDE_MM) {
          return false;
        }
      }
    }
    return true;
  }

  private static Polygon onGrid(Polygon piece) {
    return FACTORY.createPolygon(
        Stream.of(piece.getExteriorRing().getCoordinates())
            .map(FaceMerger::onGrid)
            .toArray(Coordinate[]::new));
  }

  private Stream<FlatFace> faces() {
    Geometry united = united();
    List<FlatFace> faces = new ArrayList<>();
    for (Object polygon : PolygonExtracter.getPolygons(united)) {
      face((Polygon) polygon).ifPresent(faces::add);
    }
    return faces.stream();
  }

  private Optional<FlatFace> face(Polygon polygon) {
    List<Vector3D> outer = ring(polygon.getExteriorRing(), true);
    List<List<Vector3D>> openings = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      openings.add(ring(polygon.getInteriorRingN(i), false));
    }
    openings.removeIf(List::isEmpty);
    openings.sort(Comparator.comparing(List::getFirst, BY_COORDINATES));
    return outer.isEmpty()
        ? Optional.empty()
        : Optional.of(new FlatFace(frame.normal(), outer, openings));
  }

  private List<Vector3D> ring(LinearRing ring, boolean counterClockwise) {
    LinearRing turned =
        Orientation.isCCW(ring.getCoordinates()) == counterClockwise ? ring : ring.reverse();
    List<Coordinate> points = new ArrayList<>(List.of(turned.getCoordinates()));
    points.removeLast();
    List<Vector3D> bends = bends(points).stream().map(this::lifted).toList();
    return bends.size() < 3 ? List.of() : startingAtLeast(bends);
  }

  /** The points without those on the straight line between their neighbours. */
  private static List<Coordinate> bends(List<Coordinate> points) {
    List<Coordinate> kept = new ArrayList<>(points);
    for (int i = 0; i < kept.size() && kept.size() > 2; ) {
      Coordinate before = kept.get((i + kept.size() - 1) % kept.size());
      Coordinate after = kept.get((i + 1) % kept.size());
      if (isStraight(before, kept.get(i), after)) {
        kept.remove(i);
      } else {
        i++;
      }
    }
    return kept;
  }

  private static boolean isStraight(Coordinate before, Coordinate at, Coordinate after) {
    return Distance.pointToLinePerpendicular(at, before, after) < STRAIGHT_MM
        || before.distance(after) < STRAIGHT_MM;
  }

  private Vector3D lifted(Coordinate flat) {
    Vector3D corner = corners.get(onGrid(flat));
    return corner == null ? frame.lifted(flat) : corner;
  }

  private static List<Vector3D> startingAtLeast(List<Vector3D> ring) {
    int start = ring.indexOf(ring.stream().min(BY_COORDINATES).orElseThrow());
    List<Vector3D> turned = new ArrayList<>(ring.subList(start, ring.size()));
    turned.addAll(ring.subList(0, start));
    return turned;
  }

  private static double rounded(double value) {
    return Math.rint(value * 1e4) / 1e4 + 0.0;
  }
}
