package storyrod.layout.length;

import java.util.List;
import java.util.SplittableRandom;

/** Looks for the cheapest layout and its proof: quick methods first, each only while it pays. */
final class Solver {
  /** Where only the lowest price will do. */
  static final long NO_GOAL = -1;

  private static final int MOST_ROWS = 600;
  private static final long FIRST_TURN = 900_000;
  private static final long STEPS_A_REFILL = 100_000;

  /** Where parts can be joined, dives get one share in so many of the same. */
  private static final int DIVES_BESIDE_JOINS = 6;

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
    dive(generation, chance, 0, meter);
    refill(chance);
    for (long steps = FIRST_TURN; !incumbent.isSettled() && !meter.isEnded(); steps *= 2) {
      generation.restart(basis);
      generation.run(meter);
      basis = generation.basis();
      ExactSearch.run(bars, generation, incumbent, meter.share(steps));
      boolean joins = Joining.suits(bars);
      if (joins) {
        join(generation, basis, chance, meter.share(steps));
      }
      Meter dives = meter.share(joins ? steps / DIVES_BESIDE_JOINS : steps);
      while (!incumbent.isSettled() && !dives.isEnded()) {
        generation.restart(basis);
        dive(generation, chance, 0.5, dives);
      }
      refill(chance);
    }
  }

  private void join(
      Generation generation, Simplex.Basis basis, SplittableRandom chance, Meter share) {
    while (!incumbent.isSettled() && !share.isEnded()) {
      generation.restart(basis);
      new Joining(bars, generation, incumbent, chance).run(share);
    }
  }

  /** Tries a layout on as few pieces as the bound says, where all stock is alike. */
  private void refill(SplittableRandom chance) {
    Bars.Bar bar = bars.bars().getFirst();
    long count = incumbent.bound() / Math.max(1, bar.price());
    if (Refill.suits(bars)
        && !incumbent.isSettled()
        && incumbent.isThere()
        && count <= bar.available()) {
      Meter some = meter.share(STEPS_A_REFILL);
      List<Pattern> found =
          new Refill(bars, incumbent.patterns(), Math.toIntExact(count), chance, some).run();
      if (!found.isEmpty()) {
        incumbent.offer(found);
      }
    }
  }

  private void dive(Generation generation, SplittableRandom chance, double noise, Meter share) {
    new Dive(bars, generation, greedy, incumbent, chance, noise).run(share);
  }
}
