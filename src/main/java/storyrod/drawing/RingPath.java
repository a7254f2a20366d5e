package storyrod.drawing;

import java.util.Arrays;

/**
 * Points of a ring in the making. Points on a straight stretch of it are left out, and so are tips
 * of spikes narrower than the grid.
 */
final class RingPath {
  private static final int FEW = 16;

  private long[] x = new long[FEW];
  private long[] y = new long[FEW];
  private int size;

  void add(long atX, long atY) {
    while (isNeedless(size - 2, size - 1, atX, atY)) {
      size--;
    }
    if (size == x.length) {
      x = Arrays.copyOf(x, 2 * size);
      y = Arrays.copyOf(y, 2 * size);
    }
    x[size] = atX;
    y[size] = atY;
    size++;
  }

  /** Whether the ring does without a point: it is the next one, or in line with both beside it. */
  private boolean isNeedless(int before, int at, long nextX, long nextY) {
    if (at < 0) {
      return false;
    }
    long toX = nextX - x[at];
    long toY = nextY - y[at];
    if (toX == 0 && toY == 0) {
      return true;
    }
    return before >= 0 && isStraight(x[at] - x[before], y[at] - y[before], toX, toY);
  }

  /** Straight on, or back over a spike that is at its base little more than a step wide. */
  private static boolean isStraight(long fromX, long fromY, long toX, long toY) {
    long turn = fromX * toY - fromY * toX;
    long ahead = fromX * toX + fromY * toY;
    long longer = Math.max(sum(fromX, fromY), sum(toX, toY));
    return turn == 0 || ahead < 0 && Math.abs(turn) <= longer;
  }

  private static long sum(long dx, long dy) {
    return Math.abs(dx) + Math.abs(dy);
  }

  /** The ring, without needless points where it closes. */
  ExactRing ring() {
    int from = 0;
    boolean isShorter = true;
    while (isShorter && size - from > 2) {
      isShorter = false;
      if (isNeedless(size - 2, size - 1, x[from], y[from])) {
        size--;
        isShorter = true;
      } else if (isNeedless(size - 1, from, x[from + 1], y[from + 1])) {
        from++;
        isShorter = true;
      }
    }
    return new ExactRing(Arrays.copyOfRange(x, from, size), Arrays.copyOfRange(y, from, size));
  }
}
