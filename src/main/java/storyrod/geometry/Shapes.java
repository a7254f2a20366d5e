package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/** How contours of one plane lie to each other; arcs are taken as fine chords. */
public final class Shapes {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double FINE_MM = 0.01;
  private static final double TOUCHING_MM = 0.02;

  /** Less than this, in mm², is what chords leave of arcs that run on one another. */
  private static final double NOTHING_MM2 = 0.5;

  private Shapes() {}

  /** A point where the path meets itself, if there is one, in mm on the axes of its plane. */
  public static Optional<Vector2D> crossing(Contour contour) {
    IsSimpleOp simple = new IsSimpleOp(FACTORY.createLineString(ring(contour)));
    return Optional.ofNullable(simple.getNonSimpleLocation()).map(at -> Vector2D.of(at.x, at.y));
  }

  /** Whether one lies inside another and touches it nowhere. */
  public static boolean isWithin(Contour inner, Contour outer) {
    Polygon around = polygon(outer);
    Polygon inside = polygon(inner);
    return around.contains(inside) && around.getExteriorRing().distance(inside) > TOUCHING_MM;
  }

  /** How a contour that is taken away lies to what it is taken from. */
  public enum Taken {
    NOTHING,
    FROM_THE_EDGE,
    FROM_THE_MIDDLE,
    IN_TWO,
    ALL
  }

  /** What taking one contour's inside from another's leaves. */
  public static Taken taken(Contour from, Contour away) {
    Polygon whole = polygon(from);
    Geometry left = OverlayNGRobust.overlay(whole, polygon(away), OverlayNG.DIFFERENCE);
    List<Polygon> pieces = new ArrayList<>();
    for (Object each : PolygonExtracter.getPolygons(left)) {
      if (((Polygon) each).getArea() > NOTHING_MM2) {
        pieces.add((Polygon) each);
      }
    }
    if (pieces.isEmpty()) {
      return Taken.ALL;
    }
    if (pieces.size() > 1) {
      return Taken.IN_TWO;
    }
    boolean hole = pieces.getFirst().getNumInteriorRing() > 0;
    boolean same = whole.getArea() - pieces.getFirst().getArea() < NOTHING_MM2;
    return same ? Taken.NOTHING : hole ? Taken.FROM_THE_MIDDLE : Taken.FROM_THE_EDGE;
  }

  private static Polygon polygon(Contour contour) {
    return FACTORY.createPolygon(ring(contour));
  }

  private static Coordinate[] ring(Contour contour) {
    List<Coordinate> ring = new ArrayList<>();
    contour
        .drawn(FINE_MM, Integer.MAX_VALUE)
        .forEach(each -> ring.add(new Coordinate(each.at().getX(), each.at().getY())));
    ring.add(ring.getFirst());
    return ring.toArray(Coordinate[]::new);
  }
}
