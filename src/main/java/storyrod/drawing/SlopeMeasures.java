package storyrod.drawing;

import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Slanted.Slope;

/** The dimensions of tapers and of bevelled or mitred ends. */
record SlopeMeasures(FlatPart flat, WantedDimensions wanted) {
  /** A chamfer has none: its note says all. */
  void add(Face view, Slope slope) {
    switch (slope.kind()) {
      case TAPER -> addTaper(view, slope);
      case CHAMFER -> {}
      case BEVEL, MITRE -> addLongSide(view, slope);
    }
  }

  /** Where a taper starts, from the end that stays as it is, and what is left at the other. */
  private void addTaper(Face view, Slope taper) {
    Axis along = taper.towards().axis();
    Point start = taper.first();
    wanted.between(
        view, along, start.with(along, flat.box().at(taper.towards().opposite())), start);
    Axis over = taper.from().axis();
    Length left = opposite(taper, taper.towards(), over);
    wanted.between(view, over, taper.second(), taper.second().with(over, left));
  }

  /** How long a part is on the side that keeps its length at a slanted end, if that stays. */
  private void addLongSide(Face view, Slope end) {
    if (end.from().sign() > 0 && isSaidAtOtherEnd(end)) {
      return;
    }
    Axis along = end.from().axis();
    boolean gone = new SlopedEnds(flat).isGone(end);
    Point corner = gone ? end.second() : end.first();
    Length other = opposite(end, gone ? end.towards() : end.towards().opposite(), along);
    wanted.between(view, along, corner, corner.with(along, other));
  }

  /** Whether the part is a parallelogram, both of whose long sides are equal. */
  private boolean isSaidAtOtherEnd(Slope end) {
    return facing(end, end.towards().opposite()).anyMatch(each -> each.drop().equals(end.drop()));
  }

  /** Where the plane cut from the other side comes out on an axis, or that side where none is. */
  private Length opposite(Slope slope, Face towards, Axis axis) {
    return facing(slope, towards)
        .map(each -> each.second().on(axis))
        .findFirst()
        .orElse(flat.box().at(slope.from().opposite()));
  }

  private Stream<Slope> facing(Slope slope, Face towards) {
    return flat.cuts(Slope.class).stream()
        .filter(each -> each.from() == slope.from().opposite() && each.towards() == towards);
  }
}
