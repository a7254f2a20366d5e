package storyrod.drawing;

/** A closed ring of points with whole coordinates. No point is told twice. */
final class ExactRing {
  private final long[] x;
  private final long[] y;
  private final double doubleArea;
  private final long left;
  private final long right;
  private final long low;
  private final long high;

  ExactRing(long[] x, long[] y) {
    this.x = x;
    this.y = y;
    long twice = 0;
    long[] box = {Long.MAX_VALUE, Long.MIN_VALUE, Long.MAX_VALUE, Long.MIN_VALUE};
    for (int i = 0, before = x.length - 1; i < x.length; before = i++) {
      twice += (x[before] - x[0]) * (y[i] - y[0]) - (x[i] - x[0]) * (y[before] - y[0]);
      box[0] = Math.min(box[0], x[i]);
      box[1] = Math.max(box[1], x[i]);
      box[2] = Math.min(box[2], y[i]);
      box[3] = Math.max(box[3], y[i]);
    }
    doubleArea = twice;
    left = box[0];
    right = box[1];
    low = box[2];
    high = box[3];
  }

  int size() {
    return x.length;
  }

  long x(int i) {
    return x[i];
  }

  long y(int i) {
    return y[i];
  }

  /** Twice the area; above zero where the ring turns anticlockwise in axes of y upwards. */
  double doubleArea() {
    return doubleArea;
  }

  double length() {
    double length = 0;
    for (int i = 0, before = x.length - 1; i < x.length; before = i++) {
      double dx = x[i] - x[before];
      double dy = y[i] - y[before];
      length += Math.sqrt(dx * dx + dy * dy);
    }
    return length;
  }

  /** Whether it encloses so little that it is narrower than two steps of the grid. */
  boolean isSliver() {
    return Math.abs(doubleArea) <= 2 * length();
  }

  ExactRing reversed() {
    int last = x.length - 1;
    long[] backX = new long[x.length];
    long[] backY = new long[y.length];
    for (int i = 0; i <= last; i++) {
      backX[i] = x[last - i];
      backY[i] = y[last - i];
    }
    return new ExactRing(backX, backY);
  }

  /** Whether the boxes round two rings share a point. */
  boolean isNear(ExactRing other) {
    return left <= other.right && right >= other.left && low <= other.high && high >= other.low;
  }

  /** Whether the box round a line shares a point with the box round this ring. */
  boolean isNear(long x1, long y1, long x2, long y2) {
    return Math.max(x1, x2) >= left
        && Math.min(x1, x2) <= right
        && Math.max(y1, y2) >= low
        && Math.min(y1, y2) <= high;
  }

  /** Whether this ring, which crosses another nowhere, lies within it. */
  boolean isIn(ExactRing other) {
    for (int i = 0; i < x.length; i++) {
      int side = other.sideOf(x[i], y[i]);
      if (side != 0) {
        return side > 0;
      }
    }
    return true;
  }

  /** 1 for a point within the ring, 0 for one on it, -1 for one outside. */
  private int sideOf(long px, long py) {
    boolean inside = false;
    for (int i = 0, before = x.length - 1; i < x.length; before = i++) {
      long side = (x[i] - x[before]) * (py - y[before]) - (y[i] - y[before]) * (px - x[before]);
      boolean isAcross = y[before] > py != y[i] > py;
      if (side == 0 && isBetween(px, x[before], x[i]) && isBetween(py, y[before], y[i])) {
        return 0;
      }
      if (isAcross && side > 0 == y[i] > y[before]) {
        inside = !inside;
      }
    }
    return inside ? 1 : -1;
  }

  private static boolean isBetween(long at, long one, long two) {
    return Math.min(one, two) <= at && at <= Math.max(one, two);
  }
}
