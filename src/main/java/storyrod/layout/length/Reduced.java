package storyrod.layout.length;

/** What patterns cost beyond the worth of what they give, in whole numbers. */
final class Reduced {
  private final Bars bars;
  private final PatternSet set;
  private final long[] worth;
  private final long unit;
  private final long[] holds;

  /**
   * Takes worths of sizes, brought down if patterns of unlimited stock hold more than their price.
   *
   * @param unit the worth of a price of one
   */
  Reduced(Bars bars, PatternSet set, long[] worth, long unit) {
    this.bars = bars;
    this.set = set;
    this.worth = worth;
    this.unit = unit;
    holds = new long[bars.bars().size()];
    findHolds();
    double by = 1;
    for (int bar = 0; bar < holds.length; bar++) {
      if (!bars.bars().get(bar).isLimited() && holds[bar] > price(bar)) {
        by = Math.min(by, price(bar) / (double) holds[bar]);
      }
    }
    if (by < 1) {
      scale(by);
    }
  }

  private long price(int bar) {
    return bars.bars().get(bar).price() * unit;
  }

  private void scale(double by) {
    for (int size = 0; size < worth.length; size++) {
      worth[size] = (long) (worth[size] * by * (1 - 1e-12));
    }
    findHolds();
  }

  private void findHolds() {
    for (int bar = 0; bar < holds.length; bar++) {
      holds[bar] = price(bar);
    }
    for (int i = 0; i < set.size(); i++) {
      int stock = set.pattern(i).stock();
      holds[stock] = set.isBarred(i) ? holds[stock] : Math.max(holds[stock], set.worth(i, worth));
    }
  }

  /** What a pattern costs beyond its worth, at the highest its stock can be worth. */
  long reduced(int i) {
    return holds[set.pattern(i).stock()] - set.worth(i, worth);
  }

  /** How far a price is above what the worths prove; below zero if it is impossible. */
  long gap(long price, int[] wanted, int[] left) {
    long gap = price * unit;
    for (int size = 0; size < worth.length; size++) {
      gap -= worth[size] * wanted[size];
    }
    for (int bar = 0; bar < holds.length; bar++) {
      gap += bars.bars().get(bar).isLimited() ? (holds[bar] - price(bar)) * left[bar] : 0;
    }
    return gap;
  }
}
