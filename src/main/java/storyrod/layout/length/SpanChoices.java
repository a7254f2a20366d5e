package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/** All ways to fill the spans of a piece of stock that together are worth at least some value. */
final class SpanChoices {
  private static final int MOST_TRIES = 1_000_000;

  private final long[] spans;
  private final Knapsack knapsack;
  private final long[] worth;
  private final List<List<int[]>> choices = new ArrayList<>();
  private final int[][] chosen;
  private int tries;

  SpanChoices(long[] spans, Knapsack knapsack, long[] worth) {
    this.spans = spans;
    this.knapsack = knapsack;
    this.worth = worth;
    this.chosen = new int[spans.length][];
  }

  /**
   * Shows every way that fills something, until told to stop.
   *
   * @param most how many choices a span may have
   * @return whether all were shown
   */
  boolean each(long least, int most, Predicate<int[][]> show) {
    long others = Arrays.stream(spans).map(knapsack::atMost).sum();
    for (long span : spans) {
      List<int[]> found = new ArrayList<>();
      long leastHere = least - (others - knapsack.atMost(span));
      if (leastHere <= 0) {
        found.add(new int[0]);
      }
      choices.add(found);
      if (!knapsack.each(span, leastHere, sizes -> found.add(sizes) && found.size() <= most)) {
        return false;
      }
    }
    return combine(0, least, show);
  }

  private boolean combine(int at, long least, Predicate<int[][]> show) {
    if (at == spans.length) {
      boolean empty = Arrays.stream(chosen).allMatch(span -> span.length == 0);
      return least > 0 || empty || show.test(chosen.clone());
    }
    long later = Arrays.stream(spans).skip(at + 1).map(knapsack::atMost).sum();
    for (int[] sizes : choices.get(at)) {
      if (worthOf(sizes) + later < least) {
        continue;
      }
      chosen[at] = sizes;
      if (++tries > MOST_TRIES || !combine(at + 1, least - worthOf(sizes), show)) {
        return false;
      }
    }
    return true;
  }

  private long worthOf(int[] sizes) {
    return Arrays.stream(sizes).mapToLong(size -> worth[size]).sum();
  }
}
