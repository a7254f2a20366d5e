package storyrod.layout.sheet;

import java.util.Arrays;

/**
 * The best value of things that fit into each capacity up to a most. How often a thing may be there
 * holds while it is added; things added later may bring it back, so a taker has to count.
 */
final class Knapsack {
  static final int NOTHING = -1;

  private final double[] best;
  private final int[] last;
  private final int[] times;
  private int[] sizes = new int[16];
  private int things;

  Knapsack(int capacity) {
    best = new double[capacity + 1];
    last = new int[capacity + 1];
    times = new int[capacity + 1];
    Arrays.fill(last, NOTHING);
  }

  int capacity() {
    return best.length - 1;
  }

  /** Adds a thing, numbered by how many were added before. */
  void add(int size, double value, int most) {
    if (things == sizes.length) {
      sizes = Arrays.copyOf(sizes, 2 * things);
    }
    sizes[things] = size;
    Arrays.fill(times, 0);
    for (int x = size; x < best.length; x++) {
      double with = best[x - size] + value;
      if (with > best[x] + 1e-12 && times[x - size] < most) {
        best[x] = with;
        last[x] = things;
        times[x] = times[x - size] + 1;
      }
    }
    things++;
  }

  double value(int capacity) {
    return best[capacity];
  }

  /** A thing of the best for a capacity, or {@link #NOTHING}. */
  int last(int capacity) {
    return last[capacity];
  }

  int size(int thing) {
    return sizes[thing];
  }
}
