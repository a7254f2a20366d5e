package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What parts are worth in whole numbers, and what each stock can hold of it at most: from this come
 * new patterns, bounds, and all patterns that a cheap enough layout can use.
 */
final class Pricing {
  /** A price of one, in the units of worth, is about this over the highest price. */
  private static final long HIGHEST_WORTH = 1L << 38;

  private static final double NEARLY_NOTHING = 1e-7;

  private final Bars bars;
  private final Rows rows;
  private final Knapsack knapsack;
  private final long unit;
  private final long[] worth;
  private final long[] holds;
  private int[] wanted = {};
  private int[] left = {};

  /** A pattern and what it is worth beyond its price. */
  record Candidate(Pattern pattern, long gain) {}

  Pricing(Bars bars, Rows rows, Meter meter) {
    this.bars = bars;
    this.rows = rows;
    knapsack = new Knapsack(bars.sizes(), bars.widest(), meter);
    unit = Math.max(1, HIGHEST_WORTH / bars.highestPrice());
    worth = new long[bars.kinds()];
    holds = new long[bars.bars().size()];
  }

  /** Patterns worth more than their price at given duals, which are shares of the highest price. */
  List<Candidate> price(double[] duals, int[] partsWanted, int[] stockLeft) {
    wanted = partsWanted.clone();
    left = stockLeft.clone();
    for (int size = 0; size < worth.length; size++) {
      worth[size] = inUnits(duals[size]);
    }
    knapsack.value(worth, wanted);
    List<Candidate> candidates = new ArrayList<>();
    for (int bar = 0; bar < left.length; bar++) {
      if (left[bar] > 0) {
        long dual = rows.ofBar(bar) < 0 ? 0 : inUnits(duals[rows.ofBar(bar)]);
        price(bar, priceInUnits(bar) + dual, candidates);
      }
    }
    return candidates;
  }

  private long inUnits(double dual) {
    return (long) Math.floor(Math.max(0, dual) * bars.highestPrice() * unit);
  }

  private long priceInUnits(int bar) {
    return bars.bars().get(bar).price() * unit;
  }

  private void price(int bar, long least, List<Candidate> candidates) {
    long above = least + (long) (NEARLY_NOTHING * HIGHEST_WORTH);
    long[] spans = bars.bars().get(bar).spans();
    holds[bar] =
        spans.length == 1
            ? one(bar, spans[0], above, candidates)
            : several(bar, spans, above, candidates);
  }

  /** Prices stock in one piece, with a pattern for each size that may be its largest. */
  private long one(int bar, long span, long above, List<Candidate> candidates) {
    long most = Math.min(above, knapsack.atMost(span));
    for (int largest = 0; largest < worth.length; largest++) {
      int[] sizes = knapsack.bestWith(largest, span, above);
      if (sizes.length > 0) {
        candidates.add(new Candidate(Pattern.single(bar, sizes), knapsack.bestWorth() - above));
        most = Math.max(most, knapsack.bestWorth());
      }
    }
    return knapsack.isSure() ? most : knapsack.atMost(span);
  }

  private long several(int bar, long[] spans, long above, List<Candidate> candidates) {
    long most = 0;
    int[][] chosen = new int[spans.length][];
    for (int i = 0; i < spans.length; i++) {
      chosen[i] = knapsack.best(spans[i]);
      most += knapsack.isSure() ? worthOf(chosen[i]) : knapsack.atMost(spans[i]);
    }
    // Spans are filled apart, so together they may hold more of a size than is wanted.
    Pattern pattern = new Pattern(bar, chosen).taking(wanted.clone());
    long gain = Arrays.stream(pattern.spans()).mapToLong(this::worthOf).sum() - above;
    if (gain > 0) {
      candidates.add(new Candidate(pattern, gain));
    }
    return most;
  }

  private long worthOf(int[] sizes) {
    return Arrays.stream(sizes).mapToLong(size -> worth[size]).sum();
  }

  /** The least price of a layout of what was priced last. */
  long bound() {
    if (Arrays.stream(worth).max().orElse(0) > HIGHEST_WORTH << 10) {
      return 0;
    }
    List<Bars.Bar> stock = new ArrayList<>();
    for (int i = 0; i < left.length; i++) {
      Bars.Bar bar = bars.bars().get(i);
      stock.add(new Bars.Bar(bar.spans(), left[i], bar.price()));
    }
    return CoverBound.of(stock, holds, worthWanted());
  }

  private long worthWanted() {
    long sum = 0;
    for (int size = 0; size < worth.length; size++) {
      sum = Math.addExact(sum, Math.multiplyExact(worth[size], wanted[size]));
    }
    return sum;
  }

  /**
   * All patterns that a layout of what was priced last may use at some price; none if there are too
   * many.
   */
  List<Pattern> within(long price, int most) {
    bringDown();
    long gap = gap(price);
    List<Pattern> found = new ArrayList<>();
    boolean all = gap >= 0;
    for (int bar = 0; bar < holds.length && all; bar++) {
      long least = Math.max(holds[bar], priceInUnits(bar)) - gap;
      SpanChoices choices = new SpanChoices(bars.bars().get(bar).spans(), knapsack, worth);
      int stock = bar;
      all =
          left[bar] == 0
              || choices.each(
                  least,
                  most,
                  spans -> {
                    Pattern pattern = new Pattern(stock, spans);
                    return !isWanted(pattern) || found.add(pattern) && found.size() <= most;
                  });
    }
    return all ? found : List.of();
  }

  private boolean isWanted(Pattern pattern) {
    int[] counts = pattern.counts(wanted.length);
    return IntStream.range(0, counts.length).allMatch(size -> counts[size] <= wanted[size]);
  }

  /** Lowers worths until no stock of which there is enough holds more than its price. */
  private void bringDown() {
    double by = 1;
    for (int bar = 0; bar < holds.length; bar++) {
      if (rows.ofBar(bar) < 0 && holds[bar] > priceInUnits(bar)) {
        by = Math.min(by, priceInUnits(bar) / (double) holds[bar]);
        holds[bar] = priceInUnits(bar);
      }
    }
    for (int size = 0; size < worth.length && by < 1; size++) {
      worth[size] = (long) (worth[size] * by * (1 - 1e-12));
    }
    knapsack.value(worth, wanted);
  }

  /** How far a price is above what the worths prove; below zero if it is impossible. */
  private long gap(long price) {
    long gap = price * unit - worthWanted();
    for (int bar = 0; bar < holds.length; bar++) {
      if (rows.ofBar(bar) >= 0) {
        gap += Math.max(0, holds[bar] - priceInUnits(bar)) * left[bar];
      }
    }
    return gap;
  }
}
