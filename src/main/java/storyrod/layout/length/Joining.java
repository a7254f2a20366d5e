package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Joins parts in pairs that the relaxation has mostly on one piece (the pairs of Ryan and Foster
 * 1981), one pair after the other, each time priced anew, until so few patterns are left that all
 * can be searched. Where a pair makes the rest too dear the next is tried instead (diving with
 * limited discrepancies as in Sadykov, Vanderbeck, Pessoa, Tahiri and Uchoa 2019). A pair fixes
 * less than a pattern does, so this succeeds where no pattern may be fixed by guess.
 */
final class Joining {
  private static final int MOST_TRIED = 3;
  private static final int MOST_FAILURES = 12;
  private static final int MOST_PATTERNS = 3000;
  private static final long STEPS_A_SEARCH = 20_000;
  private static final double NOTHING = 1e-3;
  private static final double NOISE = 0.5;

  private final Bars bars;
  private final Generation generation;
  private final Incumbent incumbent;
  private final SplittableRandom chance;
  private int failures;

  Joining(Bars bars, Generation generation, Incumbent incumbent, SplittableRandom chance) {
    this.bars = bars;
    this.generation = generation;
    this.incumbent = incumbent;
    this.chance = chance;
  }

  /** Whether most parts can be joined, and all stock is alike, so that the bound is near. */
  static boolean suits(Bars bars) {
    long once = Arrays.stream(bars.wanted()).filter(count -> count == 1).count();
    return Refill.suits(bars) && 2 * once >= bars.partsWanted();
  }

  /** Offers a layout at the price of the bound if it finds one. */
  void run(Meter meter) {
    explore(Joined.none(bars), meter);
  }

  private boolean isOver(Meter meter) {
    return failures > MOST_FAILURES || meter.isEnded() || incumbent.isSettled();
  }

  private void explore(Joined job, Meter meter) {
    generation.join(job);
    generation.run(meter);
    if (isOver(meter) || generation.roundedValue() > incumbent.bound() || search(job, meter)) {
      failures++;
      return;
    }
    List<int[]> pairs = pairs(job);
    if (pairs.isEmpty()) {
      offerWhole();
      failures++;
    }
    for (int i = 0; i < pairs.size() && !isOver(meter); i++) {
      explore(job.with(pairs.get(i)[0], pairs.get(i)[1]), meter);
    }
  }

  /** Offers what the relaxation uses whole, if that is all. */
  private void offerWhole() {
    int[] wanted = bars.wanted().clone();
    List<Pattern> whole = new ArrayList<>();
    double[] levels = generation.levels();
    for (int i = 0; i < levels.length; i++) {
      for (; levels[i] > 1 - NOTHING; levels[i]--) {
        whole.add(generation.pattern(i).taking(wanted));
      }
    }
    if (Greedy.sum(wanted) == 0) {
      incumbent.offer(whole.stream().filter(pattern -> !pattern.isEmpty()).toList());
    }
  }

  /** Searches all patterns that are left if they are few; whether nothing more is to be found. */
  private boolean search(Joined job, Meter meter) {
    List<Pattern> within = generation.within(incumbent.bound(), MOST_PATTERNS);
    if (within.isEmpty()) {
      return false;
    }
    Branching branching =
        new Branching(job.bars(), within, incumbent.bound(), meter.share(STEPS_A_SEARCH));
    Branching.Answer answer = branching.run();
    if (answer == Branching.Answer.FOUND) {
      incumbent.offer(branching.found().stream().map(job::apart).toList());
    }
    return answer != Branching.Answer.UNKNOWN;
  }

  private record Pair(int[] places, double liking) {}

  /** The pairs of places that are most nearly on one piece without being so. */
  private List<int[]> pairs(Joined job) {
    double[][] together = together(job);
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < together.length; a++) {
      for (int b = a + 1; b < together.length; b++) {
        double level = together[a][b];
        if (level > NOTHING && level < 1 - NOTHING) {
          double liking = level * (1 + NOISE * (chance.nextDouble() - 0.5));
          pairs.add(new Pair(new int[] {a, b}, liking));
        }
      }
    }
    return pairs.stream()
        .sorted(Comparator.comparingDouble(pair -> -pair.liking()))
        .limit(MOST_TRIED)
        .map(Pair::places)
        .toList();
  }

  /** How far the relaxation has two places on one piece, for those wanted once. */
  private double[][] together(Joined job) {
    int[] wanted = job.bars().wanted();
    double[][] together = new double[wanted.length][wanted.length];
    double[] levels = generation.levels();
    for (int i = 0; i < levels.length; i++) {
      if (levels[i] > NOTHING) {
        int[] places = once(job, generation.pattern(i));
        for (int a : places) {
          for (int b : places) {
            together[a][b] += a < b ? levels[i] : 0;
          }
        }
      }
    }
    return together;
  }

  /** The places that a pattern holds and that are wanted once. */
  private static int[] once(Joined job, Pattern pattern) {
    int[] wanted = job.bars().wanted();
    return Arrays.stream(pattern.spans()[0])
        .map(job::place)
        .filter(place -> wanted[place] == 1)
        .distinct()
        .toArray();
  }
}
