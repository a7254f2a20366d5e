package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.FlatArc;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Segment;
import storyrod.geometry.Segment.Arc;
import storyrod.measure.Length;

/** What of a contour in the front view of a flat part has to be measured. */
final class Curves {
  private static final double FEATURE_MM = 1;
  private static final double PARALLEL = 1e-6;

  private final Contour contour;

  Curves(Contour contour) {
    this.contour = contour;
  }

  /** Places along the part between which nothing is curved; those on arcs lie close together. */
  static List<Length> places(Contour contour) {
    List<Length> places = new ArrayList<>();
    for (Segment segment : contour.segments()) {
      places.add(segment.from().x());
      if (segment instanceof Arc) {
        contour.points(segment, FEATURE_MM).forEach(at -> places.add(Length.nearest(at.getX())));
      }
    }
    return places;
  }

  /** Whether its size and place along both axes, with the radii of its arcs, say all about it. */
  boolean isLikeABox() {
    Range across = contour.extent(Axis.X);
    Range up = contour.extent(Axis.Z);
    for (int i = 0; i < count(); i++) {
      Point at = contour.segments().get(i).from();
      boolean corner = isEnd(across, at.x()) && isEnd(up, at.z());
      boolean straight = contour.segments().get(i) instanceof Arc arc && !isRounding(arc, i);
      if (straight || !contour.isSmoothAfter(before(i)) && !corner && !touchesRounding(i)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isEnd(Range range, Length at) {
    return at.equals(range.from()) || at.equals(range.to());
  }

  private int count() {
    return contour.segments().size();
  }

  private int before(int i) {
    return (i + count() - 1) % count();
  }

  private boolean touchesRounding(int i) {
    return contour.segments().get(i) instanceof Arc
        || contour.segments().get(before(i)) instanceof Arc;
  }

  /** Whether an arc only rounds a corner, or an end, of the lines beside it. */
  private boolean isRounding(Arc arc, int i) {
    return contour.isSmoothAfter(before(i)) && contour.isSmoothAfter(i);
  }

  /** The points that are measured on both axes: sharp corners, and where rounded ones would be. */
  List<Point> corners() {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < count(); i++) {
      Segment segment = contour.segments().get(i);
      Segment earlier = contour.segments().get(before(i));
      boolean rounded = isRounding(segment, i) || isRounding(earlier, before(i));
      if (!rounded) {
        corners.add(segment.from());
      }
      if (isRounding(segment, i)) {
        corners.addAll(sharpened(i).map(List::of).orElseGet(() -> ends(segment)));
      }
    }
    return corners;
  }

  private boolean isRounding(Segment segment, int i) {
    return segment instanceof Arc arc && isRounding(arc, i);
  }

  private static List<Point> ends(Segment segment) {
    return List.of(segment.from(), segment.to());
  }

  /** Where the tangents at both ends of an arc meet. */
  private Optional<Point> sharpened(int i) {
    Arc arc = (Arc) contour.segments().get(i);
    FlatArc flat = contour.flat(arc);
    Vector2D one = flat.tangent(0);
    Vector2D two = flat.tangent(1);
    double cross = one.signedArea(two);
    if (Math.abs(cross) < PARALLEL) {
      return Optional.empty();
    }
    Vector2D from = contour.flat(arc.from());
    double along = contour.flat(arc.to()).subtract(from).signedArea(two) / cross;
    return Optional.of(lifted(from.add(one.multiply(along)), arc.from()));
  }

  private Point lifted(Vector2D at, Point near) {
    Point point =
        near.with(contour.across(), Length.nearest(at.getX()))
            .with(contour.up(), Length.nearest(at.getY()));
    return snapped(point, near);
  }

  /** A computed place a tick beside an exact one is that one. */
  private Point snapped(Point point, Point near) {
    Point snapped = point;
    for (Axis axis : contour.axes()) {
      Range extent = contour.extent(axis);
      for (Length exact : List.of(extent.from(), extent.to(), near.on(axis))) {
        if (snapped.on(axis).minus(exact).abs().ticks() < Length.TICKS_PER_MICROMETRE) {
          snapped = snapped.with(axis, exact);
        }
      }
    }
    return snapped;
  }

  /** The top of an arc over a level or upright chord, and the axis on which it rises. */
  record Top(Point at, Axis rises) {}

  List<Top> tops() {
    List<Top> tops = new ArrayList<>();
    for (int i = 0; i < count(); i++) {
      if (contour.segments().get(i) instanceof Arc arc && !isRounding(arc, i)) {
        for (Axis axis : contour.axes()) {
          if (arc.from().on(axis).equals(arc.to().on(axis))) {
            tops.add(new Top(middle(arc), axis));
          }
        }
      }
    }
    return tops;
  }

  Point middle(Arc arc) {
    return lifted(contour.flat(arc).at(0.5), arc.through());
  }
}
