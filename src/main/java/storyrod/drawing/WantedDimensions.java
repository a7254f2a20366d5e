package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/** Collects the dimensions that a part's drawing must have, each stretch once. */
final class WantedDimensions {
  private final FlatPart flat;
  private final LengthFormat format;
  private final DimensionSides sides;
  private final List<Wanted> wanted = new ArrayList<>();

  WantedDimensions(FlatPart flat, LengthFormat format) {
    this.flat = flat;
    this.format = format;
    this.sides = new DimensionSides(flat);
  }

  List<Wanted> all() {
    return List.copyOf(wanted);
  }

  /** The distance of a stretch from the edge it is nearer to. */
  void place(Face view, Axis axis, Point from, Point to) {
    Length after = flat.size(axis).minus(to.on(axis));
    if (from.on(axis).isLongerThan(after)) {
      stretch(view, axis, to, sides.edge(view, axis, to, flat.size(axis)));
    } else {
      stretch(view, axis, sides.edge(view, axis, from, Length.ZERO), from);
    }
  }

  /** The distance of two points, whichever lies further along the axis. */
  void between(Face view, Axis axis, Point one, Point two) {
    boolean inOrder = one.on(axis).isShorterThan(two.on(axis));
    stretch(view, axis, inOrder ? one : two, inOrder ? two : one);
  }

  /** A stretch, with its length as printed. */
  void stretch(Face view, Axis axis, Point from, Point to) {
    said(view, axis, from, to, format.format(to.on(axis).minus(from.on(axis))));
  }

  /** A stretch with a text of its own; nothing if it is there already or has no length. */
  void said(Face view, Axis axis, Point from, Point to, String text) {
    Wanted one = new Wanted(view, sides.side(view, axis, from), axis, from, to, text);
    if (one.measure().isPositive() && wanted.stream().noneMatch(one::repeats)) {
      wanted.add(one);
    }
  }
}
