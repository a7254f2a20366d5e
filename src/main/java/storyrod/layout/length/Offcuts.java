package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Lays the same parts out on the same pieces of stock so that the longest clear rest is as long as
 * can be found: a rest is wanted like a part, and its length is found by halving.
 */
final class Offcuts {
  private static final long STEPS_A_TRIAL = 40_000;
  private static final int MOST_TRIALS = 20;
  private static final int MOST_PARTS = 2000;

  private final Bars bars;
  private final Meter meter;

  Offcuts(Bars bars, Meter meter) {
    this.bars = bars;
    this.meter = meter;
  }

  /** Layouts of the same price with a rest at least as long. */
  List<Pattern> longest(List<Pattern> patterns) {
    List<Pattern> best = patterns;
    long least = longestRest(best);
    long most = Math.min(bars.widest(), rest(patterns));
    if (bars.partsWanted() > MOST_PARTS) {
      return best;
    }
    for (int i = 0; i < MOST_TRIALS && least < most && !meter.isEnded(); i++) {
      // All of the rest in one piece is worth a trial of its own.
      long length = i == 0 ? most : least + (most - least + 1) / 2;
      List<Pattern> found = with(length, patterns);
      if (found.isEmpty()) {
        most = length - 1;
      } else {
        best = found;
        least = longestRest(best);
      }
    }
    return best;
  }

  private long rest(List<Pattern> patterns) {
    long total = patterns.stream().mapToLong(pattern -> bars.bar(pattern).total()).sum();
    return total - bars.sumOfWanted();
  }

  private long longestRest(List<Pattern> patterns) {
    long longest = 0;
    for (Pattern pattern : patterns) {
      long[] spans = bars.bar(pattern).spans();
      for (int i = 0; i < spans.length; i++) {
        longest = Math.max(longest, spans[i] - bars.sum(pattern.spans()[i]));
      }
    }
    return longest;
  }

  /**
   * A layout on the stock of some patterns that leaves a rest of some length; empty if none is
   * found.
   */
  private List<Pattern> with(long length, List<Pattern> patterns) {
    int at = 0;
    while (at < bars.kinds() && bars.sizes()[at] > length) {
      at++;
    }
    boolean isPart = at < bars.kinds() && bars.sizes()[at] == length;
    Bars more = isPart ? oneMore(at, patterns) : another(at, length, patterns);
    long goal = bars.price(patterns);
    Incumbent found = new Solver(more, meter.share(STEPS_A_TRIAL), goal).run(1);
    return found.price() <= goal ? without(at, !isPart, found.patterns()) : List.of();
  }

  private Bars oneMore(int size, List<Pattern> patterns) {
    int[] wanted = bars.wanted().clone();
    wanted[size]++;
    return new Bars(bars.sizes(), wanted, used(patterns));
  }

  private Bars another(int at, long length, List<Pattern> patterns) {
    long[] sizes = new long[bars.kinds() + 1];
    int[] wanted = new int[sizes.length];
    for (int i = 0; i < sizes.length; i++) {
      int old = i < at ? i : i - 1;
      sizes[i] = i == at ? length : bars.sizes()[old];
      wanted[i] = i == at ? 1 : bars.wanted()[old];
    }
    return new Bars(sizes, wanted, used(patterns));
  }

  private List<Bars.Bar> used(List<Pattern> patterns) {
    int[] count = new int[bars.bars().size()];
    patterns.forEach(pattern -> count[pattern.stock()]++);
    List<Bars.Bar> used = new ArrayList<>();
    for (int i = 0; i < count.length; i++) {
      used.add(new Bars.Bar(bars.bars().get(i).spans(), count[i], bars.bars().get(i).price()));
    }
    return used;
  }

  /** The same patterns without one of a size, which was a size of its own or not. */
  private static List<Pattern> without(int size, boolean ownSize, List<Pattern> patterns) {
    List<Pattern> rest = new ArrayList<>();
    boolean[] done = {false};
    for (Pattern pattern : patterns) {
      int[][] spans =
          Arrays.stream(pattern.spans())
              .map(
                  span ->
                      Arrays.stream(span)
                          .filter(each -> done[0] || each != size || !(done[0] = true))
                          .map(each -> ownSize && each > size ? each - 1 : each)
                          .toArray())
              .toArray(int[][]::new);
      rest.add(new Pattern(pattern.stock(), spans));
    }
    return rest;
  }
}
