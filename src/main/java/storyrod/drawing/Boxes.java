package storyrod.drawing;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Upright boxes on the paper in the order in which they came, in mm. Whoever looks for room asks
 * for those that touch another some ten thousand times for one drawing, so they lie in one array.
 */
final class Boxes {
  private static final int SIDES = 4;

  private double[] sides = new double[64 * SIDES];
  private int size;

  void add(Bounds box) {
    if ((size + 1) * SIDES > sides.length) {
      sides = Arrays.copyOf(sides, 2 * sides.length);
    }
    int at = size * SIDES;
    sides[at] = box.left();
    sides[at + 1] = box.top();
    sides[at + 2] = box.right();
    sides[at + 3] = box.bottom();
    size++;
  }

  /** Takes away all but the first. */
  void keep(int first) {
    size = Math.min(size, first);
  }

  /** Whether one that touches a box also passes a test, which gets its number. */
  boolean anyTouching(Bounds box, IntPredicate test) {
    return anyTouching(box, new Span(0, size), test);
  }

  /** The numbers of some that came one after the other. */
  record Span(int from, int to) {}

  /** Whether one of some that touches a box also passes a test, which gets its number. */
  boolean anyTouching(Bounds box, Span span, IntPredicate test) {
    double left = box.left();
    double top = box.top();
    double right = box.right();
    double bottom = box.bottom();
    for (int i = span.from, at = i * SIDES; i < span.to; i++, at += SIDES) {
      boolean touches =
          sides[at] <= right
              && sides[at + 1] <= bottom
              && sides[at + 2] >= left
              && sides[at + 3] >= top;
      if (touches && test.test(i)) {
        return true;
      }
    }
    return false;
  }
}
