package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.List;
import storyrod.layout.Budget;

/**
 * Looks for the best layout of one job within a budget. Three ways take turns, each turn longer
 * than the one before: perfect sheets and what is left, patterns by column generation, ruin and
 * recreate. None of them knows the budget, so a larger one only goes on from where a smaller one
 * ends.
 */
final class Search {
  private static final long FIRST_TURN = 60_000;
  private static final long LONGEST_TURN = 2_000_000;
  private static final long POLISH = 60_000;
  private static final int MOST_TYPES = 150;

  private final Enlarged sizes;
  private final StepCount steps;
  private final long seed;
  private final Proof proof;
  private final Merit merit;
  private final List<Way> ways = new ArrayList<>();
  private Found best = Found.NOTHING;

  /** A way to look for less. */
  interface Way {
    /** The best it finds within some steps; it may take a few more. */
    Found look(Found best, long mostSteps);
  }

  Search(Enlarged sizes, Budget budget) {
    this.sizes = sizes;
    steps = new StepCount(budget);
    seed = budget.seed();
    merit = new Merit(sizes);
    proof = new Proof(new LayoutBounds(sizes).best());
  }

  /** The least that any layout can take. */
  long bound() {
    return proof.least();
  }

  Found run() {
    if (sizes.types.isEmpty()) {
      return new Found(List.of(), new int[0], 0);
    }
    take(FirstLayout.of(bench(0), merit, steps));
    if (!isLeast()) {
      addWays();
    }
    for (long turn = FIRST_TURN; !isLeast() && !steps.over(); ) {
      for (Way way : ways) {
        if (!isLeast() && !steps.over()) {
          take(way.look(best, turn));
        }
      }
      polish(turn / 8);
      turn = Math.min(LONGEST_TURN, 2 * turn);
    }
    polish(POLISH);
    return best;
  }

  private void addWays() {
    if (sizes.types.size() <= MOST_TYPES) {
      ways.add(new PerfectSheets(bench(1), proof, steps));
      if (sizes.parts() >= 2 * sizes.types.size()) {
        PatternSearch search = new PatternSearch(bench(2), proof, steps);
        ways.add(new CutBound(sizes, proof, steps, search));
        ways.add(search);
      }
    }
    ways.add(new RuinAndRecreate(bench(3), proof, steps));
  }

  private Bench bench(int way) {
    return new Bench(sizes, new Chance(4 * seed + way), steps);
  }

  private void polish(long mostSteps) {
    if (best.isComplete() && !steps.over()) {
      take(new Polish(bench(4), merit, steps).look(best, mostSteps));
    }
  }

  private void take(Found found) {
    if (merit.isBetter(found, best)) {
      best = found;
    }
  }

  private boolean isLeast() {
    return best.isComplete() && best.value() <= proof.least();
  }
}
