package storyrod.drawing;

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
      Coordinate[] round =
          hole.stream().map(at -> new Coordinate(at.x(), at.y())).toArray(Coordinate[]::new);
      free = free.difference(FACTORY.createMultiPointFromCoords(round).convexHull().buffer(clear));
    }
    return free;
  }
}
