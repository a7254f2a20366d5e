package storyrod.layout.sheet;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import storyrod.layout.sheet.Enlarged.Kind;

/**
 * The cheapest stock that gives an amount in all: a knapsack to be filled, by branch and bound. All
 * that decides is in whole numbers.
 */
final class StockCover {
  private static final int MOST_BRANCHES = 20_000;

  private final long[] worths;
  private final long[] available;
  private final long step;
  private long[] gives = new long[0];
  private Integer[] order = new Integer[0];
  private int branches;
  private long best;

  StockCover(List<Kind> kinds) {
    worths = kinds.stream().mapToLong(Kind::worth).toArray();
    available = kinds.stream().mapToLong(Kind::available).toArray();
    step = Math.max(1, LongStream.of(worths).reduce(0, StockCover::divisor));
  }

  private static long divisor(long a, long b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  /** About what it costs, more or less; quick. */
  double about(long need, long[] given) {
    double cheapest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < worths.length; i++) {
      if (given[i] > 0) {
        cheapest = Math.min(cheapest, worths[i] / (double) given[i]);
      }
    }
    return cheapest == Double.POSITIVE_INFINITY ? 0 : need * cheapest + 0.999 * step;
  }

  /** What it costs if a piece of the cheapest may be cut for its share; quick. */
  double share(long need, long[] given) {
    return Math.max(0, about(need, given) - 0.999 * step);
  }

  /**
   * What it costs at least.
   *
   * @param given what a piece of each kind gives at most
   */
  long least(long need, long[] given) {
    gives = given;
    order =
        IntStream.range(0, worths.length)
            .filter(i -> given[i] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> worths[i] / (double) given[i]))
            .toArray(Integer[]::new);
    best = Long.MAX_VALUE;
    branches = 0;
    branch(0, need, 0);
    return branches > MOST_BRANCHES ? fill(0, need) : best == Long.MAX_VALUE ? 0 : best;
  }

  private void branch(int at, long need, long cost) {
    if (need <= 0) {
      best = Math.min(best, cost);
      return;
    }
    if (at == order.length || ++branches > MOST_BRANCHES) {
      return;
    }
    long least = fill(at, need);
    if (least == Long.MAX_VALUE || best != Long.MAX_VALUE && cost + least >= best) {
      return;
    }
    int kind = order[at];
    for (long n = Math.min(available[kind], Math.ceilDiv(need, gives[kind])); n >= 0; n--) {
      branch(at + 1, need - n * gives[kind], cost + n * worths[kind]);
    }
  }

  /** What the rest of the kinds cost at least if a piece may be cut for its share of the cost. */
  private long fill(int from, long need) {
    long cost = 0;
    long missing = need;
    for (int i = from; i < order.length; i++) {
      int kind = order[i];
      long n = missing / gives[kind];
      if (n < available[kind]) {
        return whole(cost + n * worths[kind], missing - n * gives[kind], kind);
      }
      cost += available[kind] * worths[kind];
      missing -= available[kind] * gives[kind];
      if (missing <= 0) {
        return cost;
      }
    }
    return Long.MAX_VALUE;
  }

  private long whole(long cost, long missing, int kind) {
    BigInteger share = BigInteger.valueOf(missing).multiply(BigInteger.valueOf(worths[kind]));
    BigInteger[] parts = share.divideAndRemainder(BigInteger.valueOf(gives[kind]));
    long up = parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
    return Math.ceilDiv(cost + up, step) * step;
  }
}
