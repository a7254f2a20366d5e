package storyrod.layout.length;

import java.util.List;

/** The best layout so far and the best bound so far. */
final class Incumbent {
  private final Bars bars;
  private final long goal;
  private List<Pattern> patterns = List.of();
  private long price = Long.MAX_VALUE;
  private long bound;

  /**
   * Takes a job and a price that is as good as any.
   *
   * @param goal below zero if only the lowest will do
   */
  Incumbent(Bars bars, long goal) {
    this.bars = bars;
    this.goal = goal;
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

  /** Whether no layout can be better, or one is good enough, or none can be good enough. */
  boolean isSettled() {
    boolean hopeless = bound == Long.MAX_VALUE || goal >= 0 && bound > goal;
    return bound >= price || price <= goal || hopeless;
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
