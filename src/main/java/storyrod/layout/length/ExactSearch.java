package storyrod.layout.length;

import java.util.List;

/**
 * Looks for a layout at a given price among all patterns that can be part of one, and knows if
 * there is none.
 *
 * <p>Whole-numbered duals leave a gap between the price wanted and what the relaxation says; a
 * pattern whose reduced price is above the gap is in no such layout (as in Baldacci, Christofides
 * and Mingozzi 2008). Where few enough are left, {@link Branching} searches them.
 */
final class ExactSearch {
  private static final int MOST_PATTERNS = 30_000;

  private ExactSearch() {}

  /** Tries the cheapest price not yet ruled out, and the next, until proved or given up. */
  static void run(Bars bars, Generation generation, Incumbent incumbent, Meter meter) {
    while (!incumbent.isSettled() && !meter.isEnded()) {
      long price = incumbent.bound();
      List<Pattern> patterns = generation.within(price, MOST_PATTERNS);
      if (patterns.isEmpty()) {
        return;
      }
      Branching branching = new Branching(bars, patterns, price, meter);
      Branching.Answer answer = branching.run();
      if (answer == Branching.Answer.FOUND) {
        incumbent.offer(branching.found());
      } else if (answer == Branching.Answer.NONE) {
        incumbent.raiseBound(price + 1);
      } else {
        return;
      }
    }
  }
}
