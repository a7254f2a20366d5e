package storyrod.layout.sheet;

import java.util.Arrays;

/**
 * The sizes that pieces of a sheet need to have along one axis: whatever is cut can be cut so that
 * every piece has one of them. They are the raster points of Scheithauer and Terno (1996): sums of
 * part sizes, and of these only the largest beside another such sum.
 */
final class RasterPoints {
  private static final int NO_POINT = -1;

  private final int[] points;

  /** For each length the number of the largest point that is no longer. */
  private final int[] floor;

  /**
   * @param length of the sheet
   * @param sizes that parts have along it
   */
  RasterPoints(int length, int[] sizes) {
    boolean[] sums = sums(length, sizes);
    int[] below = new int[length + 1];
    for (int x = 0, last = 0; x <= length; x++) {
      last = sums[x] ? x : last;
      below[x] = last;
    }
    boolean[] kept = new boolean[length + 1];
    for (int x = 0; x <= length; x++) {
      if (sums[x]) {
        kept[below[length - x]] = true;
      }
    }
    floor = new int[length + 1];
    int[] found = new int[length + 1];
    int count = 0;
    for (int x = 0; x <= length; x++) {
      if (kept[x]) {
        found[count++] = x;
      }
      floor[x] = count - 1;
    }
    points = Arrays.copyOf(found, count);
  }

  private static boolean[] sums(int length, int[] sizes) {
    boolean[] sums = new boolean[length + 1];
    sums[0] = true;
    for (int size : sizes) {
      for (int x = size; x <= length; x++) {
        sums[x] |= sums[x - size];
      }
    }
    return sums;
  }

  int length() {
    return floor.length - 1;
  }

  int count() {
    return points.length;
  }

  int at(int point) {
    return points[point];
  }

  /** The first point that is no shorter than a size, or -1 if there is none. */
  int reaching(int size) {
    if (size > at(count() - 1)) {
      return NO_POINT;
    }
    int point = floor[size];
    return points[point] == size ? point : point + 1;
  }

  /** The last point that is no more than half of one. */
  int half(int point) {
    return floor[points[point] / 2];
  }

  /** What is left of a point when another is cut off. */
  int rest(int point, int cut) {
    return floor[points[point] - points[cut]];
  }
}
