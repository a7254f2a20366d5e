package storyrod.layout.length;

import java.util.List;

/** The best layout so far and the best bound so far. */
final class Incumbent {
  private final Bars bars;
  private List<Pattern> patterns = List.of();
  private long price = Long.MAX_VALUE;
  private long bound;

  Incumbent(Bars bars) {
    this.bars = bars;
  }

  /** Takes complete layouts that are better than the best so far. */
  void offer(List<Pattern> found) {
    long foundPrice = bars.price(found);
    if (foundPrice < price) {
      price = foundPrice;
      patterns = List.copyOf(found);
    }
  }

  void raiseBound(long proved) {
    bound = Math.max(bound, proved);
  }

  boolean isThere() {
    return price < Long.MAX_VALUE;
  }

  /** Whether there is a layout and none can be better, or there can be none. */
  boolean isProved() {
    return bound >= price || isImpossible();
  }

  boolean isImpossible() {
    return bound == Long.MAX_VALUE;
  }

  long price() {
    return price;
  }

  long bound() {
    return Math.min(bound, price);
  }

  List<Pattern> patterns() {
    return patterns;
  }
}
