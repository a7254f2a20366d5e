package storyrod.drawing;

import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.distance.DistanceOp;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Region;

/**
 * Where in a seen region of a face the dot of a leader stands: well inside, and if there is room
 * clear of the region's edges and of the mouths of bores, which a dot would cover.
 *
 * @param holes the seen stretches of mouths
 */
record FreeSpot(Region region, List<List<At>> holes) {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /**
   * From the middle of a dot to a line beside it, and to one that it just does not touch, in mm.
   */
  private static final double CLEAR_MM = Lowering.DOT_RADIUS + 0.5;

  private static final double LEAST_MM = Lowering.DOT_RADIUS + 0.1;

  /** As far from a row of holes a dot is not taken for one of them, and at least, in mm. */
  private static final double[] OFF_ROWS_MM = {3, 2};

  /** How far towards where its leader comes from, as a share of the region's width. */
  private static final double TOWARDS_LEADER = 0.1;

  /**
   * The spot off the rows that holes make, for a leader from the left, in the measures of the view;
   * the usual one where there is no such.
   *
   * @param fit how large the view comes out on the paper
   */
  At offRows(Fit fit) {
    Geometry face = Tips.polygon(region);
    List<Geometry> inFace = holes.stream().map(FreeSpot::around).filter(face::intersects).toList();
    if (inFace.isEmpty()) {
      return on(fit);
    }
    Geometry rows = rows(inFace.stream().map(hole -> hole.getCentroid().getCoordinate()).toList());
    for (double clear : OFF_ROWS_MM) {
      Geometry free =
          face.buffer(-CLEAR_MM / fit.factor()).difference(rows.buffer(clear / fit.factor()));
      if (!free.isEmpty()) {
        return nearest(free);
      }
    }
    return on(fit);
  }

  /**
   * From each hole to its nearest, and as far on to both sides, where a row would have its next.
   */
  private static Geometry rows(List<Coordinate> holes) {
    return FACTORY.buildGeometry(
        holes.stream()
            .map(
                hole ->
                    holes.stream()
                        .filter(other -> other != hole)
                        .min(Comparator.comparingDouble(hole::distance))
                        .<Geometry>map(next -> row(hole, next))
                        .orElseGet(() -> FACTORY.createPoint(hole)))
            .toList());
  }

  private static Geometry row(Coordinate hole, Coordinate next) {
    Coordinate before = new Coordinate(2 * hole.x - next.x, 2 * hole.y - next.y);
    Coordinate after = new Coordinate(2 * next.x - hole.x, 2 * next.y - hole.y);
    return FACTORY.createLineString(new Coordinate[] {before, after});
  }

  private At nearest(Geometry free) {
    At usual = Tips.inside(region);
    double towards = TOWARDS_LEADER * Bounds.around(region.rings().getFirst()).width();
    Point point = FACTORY.createPoint(new Coordinate(usual.x() - towards, usual.y()));
    Coordinate nearest = DistanceOp.nearestPoints(free, point)[0];
    return new At(nearest.x, nearest.y);
  }

  /**
   * The spot, in the measures of the view.
   *
   * @param fit how large the view comes out on the paper
   */
  At on(Fit fit) {
    At usual = Tips.inside(region);
    Point point = FACTORY.createPoint(new Coordinate(usual.x(), usual.y()));
    for (double clear : new double[] {CLEAR_MM / fit.factor(), LEAST_MM / fit.factor()}) {
      Geometry free = free(clear);
      if (!free.isEmpty()) {
        Coordinate nearest = DistanceOp.nearestPoints(free, point)[0];
        return new At(nearest.x, nearest.y);
      }
    }
    return usual;
  }

  /** What of the region is farther than that from its edges and from holes. */
  private Geometry free(double clear) {
    Geometry free = Tips.polygon(region).buffer(-clear);
    for (List<At> hole : holes) {
      free = free.difference(around(hole).buffer(clear));
    }
    return free;
  }

  private static Geometry around(List<At> hole) {
    Coordinate[] round =
        hole.stream().map(at -> new Coordinate(at.x(), at.y())).toArray(Coordinate[]::new);
    return FACTORY.createMultiPointFromCoords(round).convexHull();
  }
}
