package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Dual feasible functions of one direction of a sheet: they change sizes so that whatever fits side
 * by side before still fits side by side after. A bound on changed sizes is then a bound on the
 * true ones. The families are those of Fekete and Schepers (2001) and of Carlier, Clautiaux and
 * Moukrim (2007). All of them are superadditive, so a size changed as if it were a part's is the
 * changed capacity of a shorter piece of stock.
 *
 * @param size the changed size of a size between 0 and the capacity
 * @param capacity the changed capacity
 */
record DualFeasible(LongUnaryOperator size, long capacity) {
  private static final int MOST_SIZES = 40;
  private static final int MOST_PARTS_PER_UNIT = 8;
  private static final long MOST_UNITS = 1L << 22;

  /** The functions worth trying for some sizes, the plain one first. */
  static List<DualFeasible> forSizes(long capacity, long[] sizes) {
    List<DualFeasible> functions = new ArrayList<>();
    functions.add(new DualFeasible(x -> x, capacity).scaled());
    functions.add(rounded(capacity, capacity));
    for (int k = 1; k <= MOST_PARTS_PER_UNIT; k++) {
      functions.add(units(capacity, k).scaled());
    }
    for (long step : steps(capacity, sizes)) {
      functions.add(threshold(capacity, step).scaled());
      functions.add(rounded(capacity, step).scaled());
    }
    return functions;
  }

  private static long[] steps(long capacity, long[] sizes) {
    long[] all =
        Arrays.stream(sizes)
            .flatMap(x -> LongStream.of(x, capacity - x, capacity - x + 1))
            .filter(x -> x > 0 && 2 * x <= capacity)
            .sorted()
            .distinct()
            .toArray();
    int every = 1 + all.length / MOST_SIZES;
    return IntStream.range(0, all.length)
        .filter(i -> i % every == 0)
        .mapToLong(i -> all[i])
        .toArray();
  }

  /** Sizes below a step count nothing, those that leave less than a step count as the whole. */
  private static DualFeasible threshold(long capacity, long step) {
    return new DualFeasible(x -> x > capacity - step ? capacity : x < step ? 0 : x, capacity);
  }

  /** Sizes counted in whole units of a k-th, unless they are whole (k+1)-ths. */
  private static DualFeasible units(long capacity, int k) {
    return new DualFeasible(
        x -> (k + 1) * x % capacity == 0 ? k * x : (k + 1) * x / capacity * capacity, k * capacity);
  }

  /** Sizes up to half counted down in steps, larger ones by what they leave. */
  private static DualFeasible rounded(long capacity, long step) {
    long whole = capacity / step;
    return new DualFeasible(
        x -> {
          if (2 * x > capacity) {
            return 2 * (whole - (capacity - x) / step);
          }
          return 2 * x == capacity ? whole : 2 * (x / step);
        },
        2 * whole);
  }

  /** The same function in units coarse enough for products of two; rounding down keeps it legal. */
  private DualFeasible scaled() {
    if (capacity <= MOST_UNITS) {
      return this;
    }
    return new DualFeasible(
        x -> Math.multiplyExact(size.applyAsLong(x), MOST_UNITS) / capacity, MOST_UNITS);
  }

  long[] apply(long[] sizes) {
    return Arrays.stream(sizes).map(size).toArray();
  }
}
