package storyrod.layout.length;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Rounds the relaxation step by step: what it uses whole is fixed, else its most used pattern, and
 * the rest is priced again (diving as in Vanderbeck 2011; the residual problems as in Scheithauer
 * and Terno 1995). At every step the greedy methods try to finish.
 */
final class Dive {
  private static final double NEARLY_ONE = 1 - 1e-3;
  private static final int MOST_TO_REFILL = 30;
  private static final long STEPS_A_REFILL = 5_000;

  private final Bars bars;
  private final Generation generation;
  private final Greedy greedy;
  private final Incumbent incumbent;
  private final SplittableRandom chance;
  private final double noise;

  private final List<Pattern> fixed = new ArrayList<>();
  private final int[] wanted;
  private final int[] left;

  Dive(
      Bars bars,
      Generation generation,
      Greedy greedy,
      Incumbent incumbent,
      SplittableRandom chance,
      double noise) {
    this.bars = bars;
    this.generation = generation;
    this.greedy = greedy;
    this.incumbent = incumbent;
    this.chance = chance;
    this.noise = noise;
    wanted = bars.wanted().clone();
    left = bars.available();
  }

  /** Offers what it finds on the way; gives up where nothing better than the incumbent is left. */
  void run(Meter meter) {
    while (!meter.isEnded() && !incumbent.isSettled()) {
      generation.reset(wanted, left);
      generation.run(meter);
      long least = bars.price(fixed) + generation.roundedValue();
      if (meter.isEnded() || least >= incumbent.price()) {
        return;
      }
      fix();
      if (Greedy.sum(wanted) == 0) {
        incumbent.offer(fixed);
        return;
      }
      finish(meter);
    }
  }

  private void finish(Meter meter) {
    greedy.best(wanted, left).ifPresent(rest -> offer(rest, meter));
  }

  private void offer(List<Pattern> rest, Meter meter) {
    offer(rest);
    long count = incumbent.bound() / bars.highestPrice() - fixed.size();
    if (noise > 0
        && Refill.suits(bars)
        && !incumbent.isSettled()
        && count < rest.size()
        && count > 0
        && count <= MOST_TO_REFILL) {
      Meter share = meter.share(STEPS_A_REFILL);
      List<Pattern> refilled = new Refill(bars, rest, Math.toIntExact(count), chance, share).run();
      if (!refilled.isEmpty()) {
        offer(refilled);
      }
    }
  }

  private void offer(List<Pattern> rest) {
    List<Pattern> all = new ArrayList<>(fixed);
    all.addAll(rest);
    incumbent.offer(all);
  }

  private void fix() {
    double[] levels = generation.levels();
    int most = -1;
    double highest = 0;
    boolean any = false;
    for (int i = 0; i < levels.length; i++) {
      for (double level = levels[i]; level > NEARLY_ONE; level--) {
        any |= take(generation.pattern(i));
      }
      double level = levels[i] * (1 + noise * (chance.nextDouble() - 0.5));
      if (level > highest) {
        highest = level;
        most = i;
      }
    }
    if (!any && most >= 0) {
      take(generation.pattern(most));
    }
  }

  private boolean take(Pattern pattern) {
    if (left[pattern.stock()] == 0) {
      return false;
    }
    Pattern taken = pattern.taking(wanted);
    if (taken.isEmpty()) {
      return false;
    }
    left[pattern.stock()] -= bars.bar(pattern).isLimited() ? 1 : 0;
    fixed.add(taken);
    return true;
  }
}
