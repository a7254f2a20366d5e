package storyrod.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * What one area leaves of another, by the general overlay of the JTS library with snap rounding. It
 * takes some thirty times as long as {@link AreaCut} and also takes rings that the grid has turned
 * inside out somewhere.
 */
final class AreaOverlay {
  private static final PrecisionModel GRID = new PrecisionModel(1);
  private static final GeometryFactory FACTORY = new GeometryFactory(GRID);

  private AreaOverlay() {}

  static ExactArea less(ExactArea first, ExactArea second) {
    OverlayNG overlay =
        new OverlayNG(geometry(first), geometry(second), GRID, OverlayNG.DIFFERENCE);
    overlay.setStrictMode(true);
    return rings(overlay.getResult());
  }

  private static Geometry geometry(ExactArea area) {
    Polygon[] polygons = area.apart().stream().map(AreaOverlay::polygon).toArray(Polygon[]::new);
    return GeometryFixer.fix(FACTORY.createMultiPolygon(polygons));
  }

  private static Polygon polygon(ExactArea connected) {
    LinearRing[] rings =
        connected.rings().stream().map(AreaOverlay::ring).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(rings[0], Arrays.copyOfRange(rings, 1, rings.length));
  }

  private static LinearRing ring(ExactRing ring) {
    return FACTORY.createLinearRing(
        IntStream.rangeClosed(0, ring.size())
            .map(i -> i % ring.size())
            .mapToObj(i -> new Coordinate(ring.x(i), ring.y(i)))
            .toArray(Coordinate[]::new));
  }

  private static ExactArea rings(Geometry geometry) {
    List<ExactRing> all = new ArrayList<>();
    for (Object each : PolygonExtracter.getPolygons(geometry)) {
      Polygon polygon = (Polygon) each;
      all.add(ring(polygon.getExteriorRing(), true));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        all.add(ring(polygon.getInteriorRingN(i), false));
      }
    }
    all.removeIf(ExactRing::isSliver);
    return new ExactArea(all);
  }

  private static ExactRing ring(LinearRing line, boolean isOuter) {
    RingPath path = new RingPath();
    for (Coordinate at : line.getCoordinates()) {
      path.add(Math.round(at.x), Math.round(at.y));
    }
    ExactRing ring = path.ring();
    return ring.doubleArea() > 0 == isOuter ? ring : ring.reversed();
  }
}
