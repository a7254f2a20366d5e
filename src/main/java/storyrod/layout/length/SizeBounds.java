package storyrod.layout.length;

import java.util.Arrays;
import java.util.function.LongUnaryOperator;

/**
 * Bounds from sizes alone: by total length, and for stock of one length by dual feasible functions,
 * which change sizes so that whatever fits together before still fits after. The thresholds give L2
 * and L3 of Martello and Toth (1990), the steps are those of Fekete and Schepers (2001) and of
 * Carlier, Clautiaux and Moukrim (2007).
 */
final class SizeBounds {
  private static final int MOST_THRESHOLDS = 60;
  private static final int MOST_STEPS = 100;

  private final Bars bars;
  private final long capacity;

  private SizeBounds(Bars bars) {
    this.bars = bars;
    this.capacity = bars.widest();
  }

  /** The least price of any layout as far as these bounds tell. */
  static long best(Bars bars) {
    long[] holds = bars.bars().stream().mapToLong(Bars.Bar::total).toArray();
    long byLength = CoverBound.of(bars.bars(), holds, bars.sumOfWanted());
    return Math.max(byLength, new SizeBounds(bars).byFunctions());
  }

  private long byFunctions() {
    boolean oneLength =
        bars.bars().stream().allMatch(bar -> bar.spans().length == 1 && bar.total() == capacity);
    if (!oneLength || capacity >= Long.MAX_VALUE / (2L * MOST_STEPS)) {
      return 0;
    }
    long best = 0;
    for (int k = 1; k <= MOST_STEPS; k++) {
      int steps = k;
      best = Math.max(best, bound(size -> inSteps(size, steps), k * capacity));
    }
    for (long threshold : thresholds()) {
      best = Math.max(best, bound(size -> overThreshold(size, threshold), capacity));
      best = Math.max(best, bound(size -> rounded(size, threshold), 2 * (capacity / threshold)));
    }
    return best;
  }

  private long[] thresholds() {
    long[] all =
        Arrays.stream(bars.sizes())
            .flatMap(
                size ->
                    Arrays.stream(
                        new long[] {size, capacity - size, capacity - size + 1, size + 1}))
            .filter(size -> size > 0 && 2 * size <= capacity)
            .sorted()
            .distinct()
            .toArray();
    int every = 1 + all.length / MOST_THRESHOLDS;
    return java.util.stream.IntStream.range(0, all.length)
        .filter(i -> i % every == 0)
        .mapToLong(i -> all[i])
        .toArray();
  }

  private long inSteps(long size, long k) {
    long times = (k + 1) * size;
    return times % capacity == 0 ? k * size : times / capacity * capacity;
  }

  private long overThreshold(long size, long threshold) {
    if (size > capacity - threshold) {
      return capacity;
    }
    return size < threshold ? 0 : size;
  }

  private long rounded(long size, long step) {
    long whole = capacity / step;
    if (2 * size > capacity) {
      return 2 * (whole - (capacity - size) / step);
    }
    return 2 * size == capacity ? whole : 2 * (size / step);
  }

  private long bound(LongUnaryOperator function, long holds) {
    long sum = 0;
    for (int i = 0; i < bars.kinds(); i++) {
      sum += function.applyAsLong(bars.sizes()[i]) * bars.wanted()[i];
    }
    long[] all = new long[bars.bars().size()];
    Arrays.fill(all, holds);
    return CoverBound.of(bars.bars(), all, sum);
  }
}
