package storyrod.layout;

import java.util.function.BooleanSupplier;

/**
 * How hard to look: a number of steps, so that equal jobs get equal layouts, and a stop that ends
 * the search early with the best found so far.
 *
 * @param steps units of search, each about a microsecond of a present-day core; none of them is
 *     needed for a first layout
 * @param seed where chance begins
 * @param stop asked now and then; true ends the search
 */
public record Budget(long steps, long seed, BooleanSupplier stop) {
  /** The steps of a second of search. */
  public static final long STEPS_A_SECOND = 1_000_000;

  /** A search that nothing ends early. */
  public static Budget ofSteps(long steps) {
    return new Budget(steps, 1, () -> false);
  }
}
