package storyrod.drawing;

import java.util.Arrays;

/**
 * A walk along an edge of one of two areas through the other: where it crosses the other's rings,
 * and whether the other lies just to the left and just to the right of it before and after. A ring
 * crosses the line a hair to the left where one end of its edge is strictly to the left and the
 * other is not. All sides are exact; a crossing is moved to the grid, from both edges' walks to the
 * same point of it.
 */
final class AreaScan {
  private static final int FEW = 8;

  private final boolean isOfFirst;
  private final long x1;
  private final long y1;
  private final long x2;
  private final long y2;
  private final Crossings crossings = new Crossings();
  private boolean startsLeft;
  private boolean startsRight;

  /** Walks along an edge of the first area, or else of the second, through the other one. */
  AreaScan(boolean isOfFirst, long x1, long y1, long x2, long y2, ExactArea other) {
    this.isOfFirst = isOfFirst;
    this.x1 = x1;
    this.y1 = y1;
    this.x2 = x2;
    this.y2 = y2;
    for (ExactRing ring : other.rings()) {
      cross(ring);
    }
  }

  private void cross(ExactRing ring) {
    int last = ring.size() - 1;
    long before = side(x1, y1, x2, y2, ring.x(last), ring.y(last));
    for (int i = 0, j = last; i <= last; j = i++) {
      long at = side(x1, y1, x2, y2, ring.x(i), ring.y(i));
      if (before > 0 != at > 0 || before >= 0 != at >= 0) {
        cross(ring.x(j), ring.y(j), before, ring.x(i), ring.y(i), at);
      }
      before = at;
    }
  }

  /** Takes up an edge that crosses the line of this one, with the sides of its ends. */
  private void cross(long fromX, long fromY, long fromSide, long toX, long toY, long toSide) {
    long start = side(fromX, fromY, toX, toY, x1, y1);
    long end = side(fromX, fromY, toX, toY, x2, y2);
    boolean left = fromSide > 0 != toSide > 0;
    boolean right = fromSide >= 0 != toSide >= 0;
    boolean falls = start > end;
    if (falls ? start <= 0 : start >= 0) {
      startsLeft ^= left;
      startsRight ^= right;
    } else if (falls ? end < 0 : end > 0) {
      double share = (double) start / (start - end);
      double across = (double) fromSide / (fromSide - toSide);
      if (fromSide == 0) {
        crossings.add(share, fromX, fromY, left, right);
      } else if (toSide == 0) {
        crossings.add(share, toX, toY, left, right);
      } else if (isOfFirst) {
        crossings.add(share, between(x1, x2, share), between(y1, y2, share), left, right);
      } else {
        crossings.add(share, between(fromX, toX, across), between(fromY, toY, across), left, right);
      }
    }
  }

  private static long between(long from, long to, double share) {
    return from + Math.round((to - from) * share);
  }

  /** Twice the area of a triangle: above zero if its third corner is to the left of a line. */
  private static long side(long x1, long y1, long x2, long y2, long x, long y) {
    return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
  }

  /** Adds the stretches that bound what the second area leaves of the first. */
  void addTo(RingPieces pieces) {
    boolean left = startsLeft;
    boolean right = startsRight;
    long fromX = x1;
    long fromY = y1;
    for (int i = 0; i <= crossings.count; i++) {
      boolean isEnd = i == crossings.count;
      boolean nextLeft = !isEnd && left ^ crossings.left[i];
      boolean nextRight = !isEnd && right ^ crossings.right[i];
      boolean isKept = isKept(left, right);
      if (isEnd || isKept != isKept(nextLeft, nextRight)) {
        long toX = isEnd ? x2 : crossings.x[i];
        long toY = isEnd ? y2 : crossings.y[i];
        if (isKept && isOfFirst) {
          pieces.add(fromX, fromY, toX, toY);
        } else if (isKept) {
          pieces.add(toX, toY, fromX, fromY);
        }
        fromX = toX;
        fromY = toY;
      }
      left = nextLeft;
      right = nextRight;
    }
  }

  private boolean isKept(boolean left, boolean right) {
    return isOfFirst ? !left : left && right;
  }

  /** Points along the edge, in order. */
  private static final class Crossings {
    private int count;
    private double[] share = new double[FEW];
    private long[] x = new long[FEW];
    private long[] y = new long[FEW];
    private boolean[] left = new boolean[FEW];
    private boolean[] right = new boolean[FEW];

    private void add(double at, long atX, long atY, boolean toLeft, boolean toRight) {
      if (count == share.length) {
        grow();
      }
      int i = count++;
      for (; i > 0 && share[i - 1] > at; i--) {
        share[i] = share[i - 1];
        x[i] = x[i - 1];
        y[i] = y[i - 1];
        left[i] = left[i - 1];
        right[i] = right[i - 1];
      }
      share[i] = at;
      x[i] = atX;
      y[i] = atY;
      left[i] = toLeft;
      right[i] = toRight;
    }

    private void grow() {
      share = Arrays.copyOf(share, 2 * count);
      x = Arrays.copyOf(x, 2 * count);
      y = Arrays.copyOf(y, 2 * count);
      left = Arrays.copyOf(left, 2 * count);
      right = Arrays.copyOf(right, 2 * count);
    }
  }
}
