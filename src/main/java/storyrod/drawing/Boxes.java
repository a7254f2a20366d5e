package storyrod.drawing;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Upright boxes on the paper in the order in which they came, in mm. Whoever looks for room asks
 * for those that touch another some ten thousand times for one drawing, so they lie in one array.
 */
final class Boxes {
  private static final int SIDES = 4;

  /** How many boxes lie in one group: what came one after the other mostly lies close together. */
  private static final int GROUP = 8;

  private double[] sides = new double[64 * SIDES];

  /** What each group takes. */
  private double[] groups = new double[64 / GROUP * SIDES];

  private int size;

  void add(Bounds box) {
    if ((size + 1) * SIDES > sides.length) {
      sides = Arrays.copyOf(sides, 2 * sides.length);
      groups = Arrays.copyOf(groups, 2 * groups.length);
    }
    int at = size * SIDES;
    sides[at] = box.left();
    sides[at + 1] = box.top();
    sides[at + 2] = box.right();
    sides[at + 3] = box.bottom();
    group(size);
    size++;
  }

  /** Adds a box to what its group takes. */
  private void group(int number) {
    int at = number * SIDES;
    int group = number / GROUP * SIDES;
    boolean first = number % GROUP == 0;
    for (int side = 0; side < SIDES; side++) {
      double own = sides[at + side];
      double all = first ? own : groups[group + side];
      groups[group + side] = side < 2 ? Math.min(all, own) : Math.max(all, own);
    }
  }

  /** Takes away all but the first. */
  void keep(int first) {
    if (first < size) {
      size = first;
      for (int i = size / GROUP * GROUP; i < size; i++) {
        group(i);
      }
    }
  }

  /** Whether one that touches a box also passes a test, which gets its number. */
  boolean anyTouching(Bounds box, IntPredicate test) {
    return anyTouching(box, new Span(0, size), test);
  }

  /** The numbers of some that came one after the other. */
  record Span(int from, int to) {}

  /** Whether one of some that touches a box also passes a test, which gets its number. */
  boolean anyTouching(Bounds box, Span span, IntPredicate test) {
    int i = span.from;
    while (i < span.to) {
      int end = Math.min(span.to, (i / GROUP + 1) * GROUP);
      if (touches(groups, i / GROUP, box) && anyOf(new Span(i, end), box, test)) {
        return true;
      }
      i = end;
    }
    return false;
  }

  private boolean anyOf(Span span, Bounds box, IntPredicate test) {
    for (int i = span.from; i < span.to; i++) {
      if (touches(sides, i, box) && test.test(i)) {
        return true;
      }
    }
    return false;
  }

  private static boolean touches(double[] boxes, int number, Bounds box) {
    int at = number * SIDES;
    return boxes[at] <= box.right()
        && boxes[at + 1] <= box.bottom()
        && boxes[at + 2] >= box.left()
        && boxes[at + 3] >= box.top();
  }
}
