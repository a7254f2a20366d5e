package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
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

  /** The distance of a stretch from the edge it is nearer to, of the face that the view shows. */
  void place(Face view, Axis axis, Point from, Point to) {
    SlopedEnds ends = new SlopedEnds(flat);
    Length low = ends.edge(view, Face.of(axis, -1));
    Length high = ends.edge(view, Face.of(axis, 1));
    Length after = high.minus(to.on(axis));
    if (from.on(axis).minus(low).isLongerThan(after)) {
      stretch(view, axis, to, sides.edge(view, axis, to, high));
    } else {
      stretch(view, axis, sides.edge(view, axis, from, low), from);
    }
  }

  /** The distance of two points, whichever lies further along the axis. */
  void between(Face view, Axis axis, Point one, Point two) {
    boolean inOrder = one.on(axis).isShorterThan(two.on(axis));
    stretch(view, axis, inOrder ? one : two, inOrder ? two : one);
  }

  /** A stretch, with its length as printed. */
  void stretch(Face view, Axis axis, Point from, Point to) {
    said(view, axis, from, to, format.told(to.on(axis).minus(from.on(axis))));
  }

  /** How much a box takes of an axis, from whichever of its ends is nearer to the figure. */
  void sizeOf(Face view, Axis axis, Box box) {
    Axis other = Axis.other(view.axis(), axis);
    Point from = sides.corner(view, box).with(axis, box.on(axis).from());
    Length near = from.on(other);
    Length far = box.on(other).end(near.equals(box.on(other).to()) ? -1 : 1);
    Point to = from.with(axis, box.on(axis).to());
    String text = format.told(box.size(axis));
    add(new Wanted(view, sides.side(view, axis, from), axis, from, to, text, far));
  }

  /**
   * A stretch with a text of its own; nothing if it has no length or is there already. Of equal
   * ones in two views the one on the face stays.
   */
  void said(Face view, Axis axis, Point from, Point to, String text) {
    add(new Wanted(view, sides.side(view, axis, from), axis, from, to, text));
  }

  private void add(Wanted one) {
    Predicate<Wanted> inItsPlace = other -> one.repeats(other) && stands(other, one);
    if (one.measure().isPositive() && wanted.stream().noneMatch(inItsPlace)) {
      wanted.removeIf(one::repeats);
      wanted.add(one);
    }
  }

  private static boolean stands(Wanted earlier, Wanted later) {
    return earlier.view() == Face.FRONT || later.view() != Face.FRONT;
  }
}
