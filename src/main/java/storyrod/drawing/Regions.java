package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Region;

/** Cuts from the picture of a face what other faces hide of it. */
final class Regions {
  private static final PrecisionModel GRID = new PrecisionModel(1e3);
  private static final GeometryFactory FACTORY = new GeometryFactory(GRID);
  private static final double THIN_MM = 0.05;

  private final View view;
  private final STRtree index;

  Regions(View view, STRtree index) {
    this.view = view;
    this.index = index;
  }

  List<Region> of(List<ScreenFace> faces) {
    return faces.stream().flatMap(face -> seenOf(face).stream()).toList();
  }

  private List<Region> seenOf(ScreenFace face) {
    Geometry picture = polygon(face);
    List<Geometry> before = new ArrayList<>();
    for (Object each : index.query(face.envelope())) {
      ScreenFace other = (ScreenFace) each;
      if (other != face && !apart(other, face) && !apart(face, other)) {
        if (hides(other, face)) {
          return List.of();
        }
        addInFront(other, face, before);
      }
    }
    return regions(face.normal(), less(picture, before));
  }

  /** A picture less the covers before it, the largest first: most hidden faces are soon gone. */
  private static Geometry less(Geometry picture, List<Geometry> covers) {
    Geometry left = picture;
    covers.sort(Comparator.comparingDouble(Geometry::getArea).reversed());
    for (Geometry cover : covers) {
      if (left.isEmpty()) {
        return left;
      }
      if (left.getEnvelopeInternal().intersects(cover.getEnvelopeInternal())) {
        OverlayNG overlay = new OverlayNG(left, cover, GRID, OverlayNG.DIFFERENCE);
        overlay.setStrictMode(true);
        left = overlay.getResult();
      }
    }
    return left;
  }

  /** Whether a convex picture without openings lies over all of another and nearer everywhere. */
  private boolean hides(ScreenFace one, ScreenFace two) {
    return one.envelope().contains(two.envelope())
        && one.isAround(two.rings().getFirst())
        && range(depthDifference(one, two), two).getMin() > ScreenFace.ON_FACE_MM;
  }

  /** The least and the most that a linear function of the view is at a face's corners. */
  private static DoubleSummaryStatistics range(double[] linear, ScreenFace face) {
    return face.rings().getFirst().stream()
        .mapToDouble(at -> linear[0] * at.x() + linear[1] * at.y() + linear[2])
        .summaryStatistics();
  }

  /** Whether a side of one picture's outer ring is a line that parts the two pictures. */
  private static boolean apart(ScreenFace one, ScreenFace two) {
    List<At> ring = one.rings().getFirst();
    At before = ring.getLast();
    for (At at : ring) {
      if (ScreenFace.isOneSided(ring, before, at, 1)
              && ScreenFace.isOneSided(two.rings().getFirst(), before, at, -1)
          || ScreenFace.isOneSided(ring, before, at, -1)
              && ScreenFace.isOneSided(two.rings().getFirst(), before, at, 1)) {
        return true;
      }
      before = at;
    }
    return false;
  }

  /** Adds the part of another face's picture where that face is nearer to the viewer. */
  private void addInFront(ScreenFace other, ScreenFace face, List<Geometry> before) {
    double[] nearer = depthDifference(other, face);
    DoubleSummaryStatistics range = range(nearer, other);
    if (range.getMax() <= ScreenFace.ON_FACE_MM) {
      return;
    }
    Geometry picture = polygon(other);
    if (range.getMin() < -ScreenFace.ON_FACE_MM) {
      Geometry half = half(nearer, other);
      picture = OverlayNG.overlay(picture, half, OverlayNG.INTERSECTION, GRID);
    }
    for (Object polygon : PolygonExtracter.getPolygons(picture)) {
      before.add((Polygon) polygon);
    }
  }

  /** How much nearer the other face's plane is, as a linear function a x + b y + c of the view. */
  private double[] depthDifference(ScreenFace other, ScreenFace face) {
    double[] near = depth(other);
    double[] far = depth(face);
    return new double[] {near[0] - far[0], near[1] - far[1], near[2] - far[2]};
  }

  private double[] depth(ScreenFace face) {
    Vector3D normal = face.normal();
    double facing = normal.dot(view.toViewer());
    return new double[] {
      -normal.dot(view.right()) / facing, normal.dot(view.up()) / facing, face.offset() / facing
    };
  }

  /**
   * A rectangle that covers, of the half-plane where a linear function is positive, all near a
   * face.
   */
  private static Geometry half(double[] linear, ScreenFace near) {
    double slope = Math.hypot(linear[0], linear[1]);
    double nx = linear[0] / slope;
    double ny = linear[1] / slope;
    Coordinate centre = near.envelope().centre();
    double away = nx * centre.x + ny * centre.y + linear[2] / slope;
    double reach = near.envelope().getDiameter() + 1;
    double x = centre.x - away * nx;
    double y = centre.y - away * ny;
    double far = reach + Math.abs(away);
    return FACTORY.createPolygon(
        new Coordinate[] {
          grid(x - ny * reach, y + nx * reach),
          grid(x + ny * reach, y - nx * reach),
          grid(x + ny * reach + nx * far, y - nx * reach + ny * far),
          grid(x - ny * reach + nx * far, y + nx * reach + ny * far),
          grid(x - ny * reach, y + nx * reach)
        });
  }

  private static Polygon polygon(ScreenFace face) {
    LinearRing[] rings = face.rings().stream().map(Regions::ring).toArray(LinearRing[]::new);
    LinearRing[] openings = java.util.Arrays.copyOfRange(rings, 1, rings.length);
    return FACTORY.createPolygon(rings[0], openings);
  }

  private static LinearRing ring(List<At> ring) {
    Coordinate[] closed = new Coordinate[ring.size() + 1];
    for (int i = 0; i <= ring.size(); i++) {
      At at = ring.get(i % ring.size());
      closed[i] = grid(at.x(), at.y());
    }
    return FACTORY.createLinearRing(closed);
  }

  private static Coordinate grid(double x, double y) {
    return new Coordinate(GRID.makePrecise(x), GRID.makePrecise(y));
  }

  private static List<Region> regions(Vector3D normal, Geometry picture) {
    List<Region> regions = new ArrayList<>();
    for (Object each : PolygonExtracter.getPolygons(picture)) {
      Polygon polygon = (Polygon) each;
      if (polygon.getArea() > THIN_MM * polygon.getLength()) {
        regions.add(new Region(normal, rings(polygon), polygon.getArea()));
      }
    }
    return regions;
  }

  private static List<List<At>> rings(Polygon polygon) {
    List<List<At>> rings = new ArrayList<>();
    rings.add(points(polygon.getExteriorRing()));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(points(polygon.getInteriorRingN(i)));
    }
    return rings;
  }

  private static List<At> points(LinearRing ring) {
    List<At> points = new ArrayList<>();
    for (int i = 0; i < ring.getNumPoints() - 1; i++) {
      points.add(new At(ring.getCoordinateN(i).x, ring.getCoordinateN(i).y));
    }
    return points;
  }
}
