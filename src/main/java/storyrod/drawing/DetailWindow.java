package storyrod.drawing;

import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** How much of a part a detail shows: a joint with the edges near it and a little around. */
record DetailWindow(FlatPart flat, double factor) {
  /** What is no longer than this on the paper is shown whole, in mm. */
  private static final double WHOLE = 34;

  /** How much is shown beside a joint. */
  private static final double BESIDE = 7;

  /** An edge no further than this from a joint is shown. */
  private static final double EDGE = 18;

  /** The longest side of a detail, and how much of a joint is shown that is longer. */
  static final double LONGEST = 62;

  private static final double END = 24;

  Box of(Box joint) {
    Box window = flat.box();
    for (Axis axis : Axis.values()) {
      window = window.with(axis, range(axis, joint.on(axis)));
    }
    return window;
  }

  private Range range(Axis axis, Range joint) {
    Length size = flat.size(axis);
    if (mm(size) <= WHOLE) {
      return flat.box().on(axis);
    }
    Length after = size.minus(joint.to());
    Length from = mm(joint.from()) <= EDGE ? Length.ZERO : joint.from().minus(real(BESIDE));
    Length to = mm(after) <= EDGE ? size : joint.to().plus(real(BESIDE));
    if (mm(to.minus(from)) <= LONGEST) {
      return new Range(from, to);
    }
    return joint.from().isLongerThan(after)
        ? new Range(joint.to().minus(real(END)).max(from), to)
        : new Range(from, joint.from().plus(real(END)).min(to));
  }

  private double mm(Length length) {
    return length.toMm() * factor;
  }

  private Length real(double mm) {
    return Length.nearest(mm / factor);
  }

  /** Whether a window is small enough for a detail. */
  boolean holds(Box window, Face view) {
    return DimensionSides.inPlane(view).stream().allMatch(axis -> mm(window.size(axis)) <= LONGEST);
  }
}
