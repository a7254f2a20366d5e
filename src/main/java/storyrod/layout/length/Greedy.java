package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Layouts in one go: best fit decreasing (Johnson 1973), and filling one piece after the other with
 * least slack around the largest part left (Gupta and Ho 1999, in the form of Fleszar and Hindi
 * 2002), on whichever kind of stock then costs least for what it holds.
 */
final class Greedy {
  private final Bars bars;
  private final Meter meter;

  Greedy(Bars bars, Meter meter) {
    this.bars = bars;
    this.meter = meter;
  }

  /** The cheapest layout found of some parts on some stock. */
  Optional<List<Pattern>> best(int[] wanted, int[] available) {
    List<List<Pattern>> found = new ArrayList<>();
    for (Comparator<Integer> order : List.of(perLength(), longestFirst())) {
      int[] kinds = kinds(order);
      BestFit.fill(bars, wanted, available, kinds).ifPresent(found::add);
    }
    new LeastSlack(bars, meter).fill(wanted, available).ifPresent(found::add);
    return found.stream()
        .map(each -> cheaper(each, available))
        .min(Comparator.comparingLong(bars::price));
  }

  private int[] kinds(Comparator<Integer> order) {
    return IntStream.range(0, bars.bars().size()).boxed().sorted(order).mapToInt(i -> i).toArray();
  }

  private Comparator<Integer> perLength() {
    return Comparator.comparingDouble(
        i -> bars.bars().get(i).price() / (double) Math.max(1, bars.bars().get(i).total()));
  }

  private Comparator<Integer> longestFirst() {
    return Comparator.comparingLong(i -> -bars.bars().get(i).widest());
  }

  /** The same patterns, each on the cheapest stock that is left and long enough. */
  private List<Pattern> cheaper(List<Pattern> patterns, int[] available) {
    if (bars.bars().size() == 1 || !bars.hasOneSpanEach()) {
      return patterns;
    }
    int[] left = available.clone();
    patterns.forEach(pattern -> left[pattern.stock()]--);
    List<Pattern> moved = new ArrayList<>();
    for (Pattern pattern : longestFirst(patterns)) {
      left[pattern.stock()]++;
      int stock = cheapest(bars.sum(pattern.spans()[0]), left);
      left[stock]--;
      moved.add(new Pattern(stock, pattern.spans()));
    }
    return moved;
  }

  private List<Pattern> longestFirst(List<Pattern> patterns) {
    return patterns.stream()
        .sorted(Comparator.comparingLong(pattern -> -bars.sum(pattern.spans()[0])))
        .toList();
  }

  private int cheapest(long length, int[] left) {
    return IntStream.range(0, left.length)
        .filter(i -> left[i] > 0 && bars.bars().get(i).widest() >= length)
        .boxed()
        .min(
            Comparator.<Integer>comparingLong(i -> bars.bars().get(i).price())
                .thenComparingLong(i -> bars.bars().get(i).widest()))
        .orElseThrow();
  }

  /** How many parts are still wanted. */
  static int sum(int[] wanted) {
    return Arrays.stream(wanted).sum();
  }
}
