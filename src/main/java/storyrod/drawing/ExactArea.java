package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.At;

/**
 * An area of a view, bounded by closed rings of points on a grid of a thousandth of a millimetre.
 * The area lies to the left of every ring, in axes of x to the right and y upwards or, what is the
 * same to it, to the right in axes of y downwards. Whole numbers make every question of left and
 * right exact.
 */
final class ExactArea {
  static final ExactArea EMPTY = new ExactArea(List.of());
  private static final double UNITS_PER_MM = 1000;

  private final List<ExactRing> rings;

  ExactArea(List<ExactRing> rings) {
    this.rings = rings;
  }

  /** An area with its outer ring first, then its openings, in mm, however they turn. */
  static ExactArea of(List<List<At>> rings) {
    List<ExactRing> turned = new ArrayList<>();
    for (List<At> ring : rings) {
      ExactRing each = ring(ring);
      if (each.doubleArea() != 0) {
        turned.add(each.doubleArea() > 0 == turned.isEmpty() ? each : each.reversed());
      }
    }
    return new ExactArea(turned);
  }

  private static ExactRing ring(List<At> points) {
    RingPath path = new RingPath();
    for (At at : points) {
      path.add(Math.round(at.x() * UNITS_PER_MM), Math.round(at.y() * UNITS_PER_MM));
    }
    return path.ring();
  }

  List<ExactRing> rings() {
    return rings;
  }

  boolean isEmpty() {
    return rings.isEmpty();
  }

  /** Whether the box round a line shares a point with the box round any of the rings. */
  boolean isNear(long x1, long y1, long x2, long y2) {
    for (ExactRing ring : rings) {
      if (ring.isNear(x1, y1, x2, y2)) {
        return true;
      }
    }
    return false;
  }

  double areaMm2() {
    double twice = 0;
    for (ExactRing ring : rings) {
      twice += ring.doubleArea();
    }
    return twice / 2 / UNITS_PER_MM / UNITS_PER_MM;
  }

  /** What another area leaves of this one. */
  ExactArea less(ExactArea other) {
    return new AreaCut(this, other).left();
  }

  /** The connected areas, each with its outer ring first, then its openings, in mm. */
  List<ExactArea> apart() {
    List<List<ExactRing>> apart = new ArrayList<>();
    rings.stream().filter(ring -> ring.doubleArea() > 0).forEach(ring -> apart.add(listOf(ring)));
    for (ExactRing opening : rings) {
      if (opening.doubleArea() < 0) {
        apart.stream()
            .filter(area -> apart.size() == 1 || opening.isIn(area.getFirst()))
            .findFirst()
            .ifPresent(area -> area.add(opening));
      }
    }
    return apart.stream().map(ExactArea::new).toList();
  }

  private static List<ExactRing> listOf(ExactRing ring) {
    List<ExactRing> rings = new ArrayList<>();
    rings.add(ring);
    return rings;
  }

  double perimeterMm() {
    return rings.stream().mapToDouble(ExactRing::length).sum() / UNITS_PER_MM;
  }

  List<List<At>> points() {
    return rings.stream().map(ExactArea::points).toList();
  }

  private static List<At> points(ExactRing ring) {
    List<At> points = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      points.add(new At(ring.x(i) / UNITS_PER_MM, ring.y(i) / UNITS_PER_MM));
    }
    return points;
  }
}
