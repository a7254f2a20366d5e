package storyrod.layout.length;

import java.util.SplittableRandom;

/** Looks for the cheapest layout and its proof: quick methods first, each only while it pays. */
final class Solver {
  /** Where only the lowest price will do. */
  static final long NO_GOAL = -1;

  private static final int MOST_ROWS = 600;

  private final Bars bars;
  private final Meter meter;
  private final Incumbent incumbent;
  private final Greedy greedy;

  Solver(Bars bars, Meter meter, long goal) {
    this.bars = bars;
    this.meter = meter;
    incumbent = new Incumbent(bars, goal);
    greedy = new Greedy(bars, meter);
  }

  /** The best layout and bound at the end of the search; the meter may end it early. */
  Incumbent run(long seed) {
    incumbent.raiseBound(SizeBounds.best(bars));
    greedy.best(bars.wanted(), bars.available()).ifPresent(incumbent::offer);
    if (!incumbent.isSettled() && bars.kinds() <= MOST_ROWS) {
      generate(new SplittableRandom(seed));
    }
    return incumbent;
  }

  private void generate(SplittableRandom chance) {
    Generation generation = new Generation(bars, meter);
    incumbent.patterns().forEach(generation::add);
    incumbent.raiseBound(generation.bound(meter));
    generation.endExchanges();
    incumbent.raiseBound(generation.bound(meter));
    Simplex.Basis basis = generation.basis();
    dive(generation, chance, 0);
    if (!incumbent.isSettled()) {
      generation.restart(basis);
      generation.run(meter);
      basis = generation.basis();
      ExactSearch.run(bars, generation, incumbent, meter);
    }
    while (!incumbent.isSettled() && !meter.isEnded()) {
      generation.restart(basis);
      dive(generation, chance, 0.5);
    }
  }

  private void dive(Generation generation, SplittableRandom chance, double noise) {
    new Dive(bars, generation, greedy, incumbent, chance, noise).run(meter);
  }
}
