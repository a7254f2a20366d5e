package storyrod.layout.length;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The least price of pieces that together hold what all parts are worth, where each piece holds a
 * worth that no pattern of it exceeds. For one kind of stock this is the bound of Farley (1990),
 * for any worth that parts may have; for several it is a small knapsack problem, solved exactly or,
 * if that takes long, with its last piece taken in part.
 */
final class CoverBound {
  private static final int MOST_NODES = 20_000;

  private final List<Bars.Bar> bars;
  private final long[] holds;
  private final int[] order;
  private long best;
  private int nodes;

  private CoverBound(List<Bars.Bar> bars, long[] holds) {
    this.bars = bars;
    this.holds = holds;
    this.order =
        IntStream.range(0, bars.size())
            .filter(i -> holds[i] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> bars.get(i).price() / (double) holds[i]))
            .mapToInt(i -> i)
            .toArray();
  }

  /** The bound, or {@link Long#MAX_VALUE} if all pieces together do not hold enough. */
  static long of(List<Bars.Bar> bars, long[] holds, long worth) {
    CoverBound bound = new CoverBound(bars, holds);
    bound.best = Long.MAX_VALUE;
    bound.search(0, worth, 0);
    return bound.nodes <= MOST_NODES ? bound.best : bound.inPart(0, worth);
  }

  private void search(int at, long worth, long price) {
    nodes++;
    if (worth <= 0) {
      best = Math.min(best, price);
      return;
    }
    if (at == order.length || nodes > MOST_NODES || cannotBeat(at, worth, price)) {
      return;
    }
    Bars.Bar bar = bars.get(order[at]);
    long most = Math.min(bar.available(), Math.ceilDiv(worth, holds[order[at]]));
    for (long taken = most; taken >= 0 && nodes <= MOST_NODES; taken--) {
      search(at + 1, worth - taken * holds[order[at]], price + taken * bar.price());
    }
  }

  private boolean cannotBeat(int at, long worth, long price) {
    long least = inPart(at, worth);
    return least == Long.MAX_VALUE || price + least >= best;
  }

  /** The bound if the last piece may be taken in part. */
  private long inPart(int from, long worth) {
    long left = worth;
    long price = 0;
    for (int at = from; at < order.length && left > 0; at++) {
      Bars.Bar bar = bars.get(order[at]);
      long holding = holds[order[at]];
      if (bar.available() >= Math.ceilDiv(left, holding)) {
        return price + left / holding * bar.price() + share(left % holding, bar.price(), holding);
      }
      left -= bar.available() * holding;
      price += bar.available() * bar.price();
    }
    return left > 0 ? Long.MAX_VALUE : price;
  }

  private static long share(long part, long price, long whole) {
    if (Math.multiplyHigh(part, price) == 0 && part * price >= 0) {
      return Math.ceilDiv(part * price, whole);
    }
    BigInteger[] quotient =
        BigInteger.valueOf(part)
            .multiply(BigInteger.valueOf(price))
            .divideAndRemainder(BigInteger.valueOf(whole));
    return quotient[0].longValueExact() + (quotient[1].signum() > 0 ? 1 : 0);
  }
}
