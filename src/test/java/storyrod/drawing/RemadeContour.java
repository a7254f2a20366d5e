package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.FlatArc;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Segment;
import storyrod.measure.Length;

/**
 * A path made again. From the path comes only what follows what, line or arc, and to which side an
 * arc bulges; where its corners lie and how round it is comes from the drawing.
 *
 * @param radius as a note gives it for all its arcs, in mm
 * @param given where a coordinate lies by the drawing, if it says so
 */
record RemadeContour(
    Contour old, Optional<Double> radius, BiFunction<Axis, Length, Optional<Length>> given) {
  Contour made() {
    List<Segment> segments = new ArrayList<>();
    for (Segment segment : old.segments()) {
      Point from = point(segment.from());
      Point to = point(segment.to());
      segments.add(
          segment instanceof Segment.Arc arc
              ? new Segment.Arc(from, through(arc, from, to), to)
              : new Segment.Line(from, to));
    }
    return new Contour(old.normal(), segments);
  }

  private Point point(Point point) {
    Point made = point.with(old.normal(), Length.ZERO);
    for (Axis axis : old.axes()) {
      made = made.with(axis, at(axis, point.on(axis)));
    }
    return made;
  }

  private Length at(Axis axis, Length at) {
    return given.apply(axis, at).or(() -> fallen(axis, at)).orElseGet(() -> beside(axis, at));
  }

  /**
   * Where an arc ends whose top and radius are given, but not its ends: a slanted end took them.
   */
  private Optional<Length> fallen(Axis axis, Length at) {
    for (Segment.Arc arc : old.arcs()) {
      Axis other = Axis.other(axis, old.normal());
      boolean level = arc.from().on(axis).equals(at) && arc.to().on(axis).equals(at);
      Optional<Length> top = given.apply(axis, new Curves(old).middle(arc).on(axis));
      Optional<Length> one = given.apply(other, arc.from().on(other));
      Optional<Length> two = given.apply(other, arc.to().on(other));
      if (level && top.isPresent() && one.isPresent() && two.isPresent() && radius.isPresent()) {
        double half = one.get().minus(two.get()).toMm() / 2;
        double fall = radius.get() - Math.sqrt(radius.get() * radius.get() - half * half);
        boolean up = top.get().isShorterThan(at);
        return Optional.of(top.get().plus(Length.nearest(up ? fall : -fall)));
      }
    }
    return Optional.empty();
  }

  /** Where a rounding runs into a side, its radius away from the end of the path. */
  private Length beside(Axis axis, Length at) {
    Range extent = old.extent(axis);
    boolean low = at.minus(extent.from()).isShorterThan(extent.to().minus(at));
    Length end = extent.end(low ? -1 : 1);
    Length made =
        given
            .apply(axis, end)
            .orElseThrow(() -> new IllegalStateException(axis + " = " + at + " is not given"));
    double way = radius.orElseThrow(() -> new IllegalStateException("no radius is given"));
    return made.plus(Length.nearest(low ? way : -way));
  }

  /** The top of an arc over a level chord is measured; else its radius says how it bulges. */
  private Point through(Segment.Arc arc, Point from, Point to) {
    for (Axis axis : old.axes()) {
      Axis other = Axis.other(axis, old.normal());
      Length top = new Curves(old).middle(arc).on(axis);
      Optional<Length> rises = given.apply(axis, top);
      if (arc.from().on(axis).equals(arc.to().on(axis)) && rises.isPresent()) {
        return from.with(axis, rises.get()).with(other, half(from, to, other));
      }
    }
    return byRadius(arc, from, to);
  }

  private static Length half(Point from, Point to, Axis axis) {
    return from.on(axis).plus(to.on(axis)).dividedBy(2, java.math.RoundingMode.HALF_EVEN);
  }

  private Point byRadius(Segment.Arc arc, Point from, Point to) {
    double round = radius.orElseThrow(() -> new IllegalStateException("no radius is given"));
    FlatArc flat = old.flat(arc);
    double sweep = Math.abs(flat.sweep());
    double half = old.flat(from).distance(old.flat(to)) / 2;
    double rise = Math.sqrt(Math.max(0, round * round - half * half));
    double sagitta = sweep > Math.PI ? round + rise : round - rise;
    var middle = old.flat(from).add(old.flat(to)).multiply(0.5);
    var out = flat.at(0.5).subtract(old.flat(arc.from()).add(old.flat(arc.to())).multiply(0.5));
    var at = middle.add(out.normalize().multiply(sagitta));
    return from.with(old.across(), Length.nearest(at.getX()))
        .with(old.up(), Length.nearest(at.getY()));
  }
}
