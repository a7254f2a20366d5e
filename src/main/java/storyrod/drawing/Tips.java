package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.algorithm.InteriorPointArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import storyrod.drawing.Balloons.Tip;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Region;
import storyrod.drawing.Seen.Stroke;
import storyrod.piece.Part;

/** Chooses where leaders end: in the largest region that is seen of a part. */
final class Tips {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double SHARE_A_BALLOON_MM = 60;

  private final Fit fit;

  Tips(Fit fit) {
    this.fit = fit;
  }

  private record Candidate(At at, double area) {}

  /**
   * One tip for each mark, and more where equal parts lie far apart on the paper. A mark of which
   * nothing is seen has none.
   */
  List<Tip> of(List<Part> parts, List<Seen> seen) {
    Map<String, List<Candidate>> byMark = new LinkedHashMap<>();
    for (int i = 0; i < parts.size(); i++) {
      List<Candidate> same = byMark.computeIfAbsent(parts.get(i).mark(), key -> new ArrayList<>());
      candidate(seen.get(i)).ifPresent(same::add);
    }
    List<Tip> tips = new ArrayList<>();
    byMark.forEach((mark, same) -> farApart(same).forEach(at -> tips.add(new Tip(mark, at))));
    return tips;
  }

  /** Of a part of which only the outline is drawn, a point on that. */
  private Optional<Candidate> candidate(Seen seen) {
    return seen.item().isOpen()
        ? seen.lines().outlines().stream()
            .max(Comparator.comparingDouble(Stroke::length))
            .map(longest -> new Candidate(fit.on(longest.at(0.5)), 0))
        : largest(seen).map(region -> candidate(region, seen.lines().mouths()));
  }

  /** Empty where no region is seen. */
  static Optional<Region> largest(Seen seen) {
    return seen.regions().stream().max(Comparator.comparingDouble(Region::areaMm2));
  }

  private Candidate candidate(Region region, List<List<At>> holes) {
    return new Candidate(fit.on(new FreeSpot(region, holes).on(fit)), region.areaMm2());
  }

  private static List<At> farApart(List<Candidate> same) {
    List<Candidate> sorted = new ArrayList<>(same);
    sorted.sort(Comparator.comparingDouble(Candidate::area).reversed());
    List<At> kept = new ArrayList<>();
    for (Candidate next : sorted) {
      if (kept.stream().allMatch(at -> at.distance(next.at()) > SHARE_A_BALLOON_MM)) {
        kept.add(next.at());
      }
    }
    return kept;
  }

  /** A point well inside a region: its centre of gravity, unless that lies outside. */
  static At inside(Region region) {
    Polygon polygon = polygon(region);
    Coordinate centre = polygon.getCentroid().getCoordinate();
    Coordinate point =
        polygon.contains(FACTORY.createPoint(centre))
            ? centre
            : InteriorPointArea.getInteriorPoint(polygon);
    return new At(point.x, point.y);
  }

  static Polygon polygon(Region region) {
    LinearRing[] rings = region.rings().stream().map(Tips::ring).toArray(LinearRing[]::new);
    LinearRing[] openings = java.util.Arrays.copyOfRange(rings, 1, rings.length);
    return FACTORY.createPolygon(rings[0], openings);
  }

  private static LinearRing ring(List<At> ring) {
    Coordinate[] closed = new Coordinate[ring.size() + 1];
    for (int i = 0; i <= ring.size(); i++) {
      At at = ring.get(i % ring.size());
      closed[i] = new Coordinate(at.x(), at.y());
    }
    return FACTORY.createLinearRing(closed);
  }
}
