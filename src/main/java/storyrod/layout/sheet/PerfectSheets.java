package storyrod.layout.sheet;

import java.util.List;

/**
 * Uses patterns without waste as often as they go, those first that use parts up, and lays the rest
 * out by ruin and recreate: for jobs that leave next to no waste on most of their sheets.
 */
final class PerfectSheets implements Search.Way {
  private static final long STEPS_A_TRY = 20_000;

  private final Bench bench;
  private final StepCount steps;
  private final Proof proof;
  private final RuinAndRecreate rest;
  private List<Pattern> patterns = List.of();
  private boolean known;

  PerfectSheets(Bench bench, Proof proof, StepCount steps) {
    this.bench = bench;
    this.proof = proof;
    this.steps = steps;
    rest = new RuinAndRecreate(bench, proof, steps);
  }

  @Override
  public Found look(Found best, long mostSteps) {
    long until = steps.taken() + mostSteps / 3;
    if (!known) {
      known = true;
      patterns = new Blocks(bench.sizes, steps).patterns();
    }
    while (!patterns.isEmpty() && steps.taken() < until && !steps.over()) {
      if (attempt()) {
        return bench.found();
      }
    }
    return best;
  }

  /** One try at a layout that takes no more than the bound. */
  private boolean attempt() {
    bench.clear();
    int used = 0;
    while (!bench.isComplete() && bench.chance.below(12) > 0) {
      Pattern best = best();
      if (best.counts().length == 0) {
        break;
      }
      do {
        bench.use(best);
        used++;
      } while (isOfUse(best));
    }
    return rest.aim(proof.least(), used, steps.taken() + STEPS_A_TRY);
  }

  private boolean isOfUse(Pattern pattern) {
    return pattern.isWithin(bench.out) && bench.mayOpen(pattern.kind(), proof.least());
  }

  /** The pattern that uses the largest share of its types up, chance having a say. */
  private Pattern best() {
    Pattern best = new Pattern(0, new CutTree(), new int[0]);
    double most = 0;
    for (Pattern pattern : patterns) {
      if (isOfUse(pattern)) {
        double score = share(pattern) + 0.4 * bench.chance.part();
        if (score > most) {
          most = score;
          best = pattern;
        }
      }
    }
    return best;
  }

  private double share(Pattern pattern) {
    int[] counts = pattern.counts();
    int times = Integer.MAX_VALUE;
    int types = 0;
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        times = Math.min(times, bench.out[i] / counts[i]);
        types++;
      }
    }
    int usedUp = 0;
    for (int i = 0; i < counts.length; i++) {
      usedUp += counts[i] > 0 && bench.out[i] == times * counts[i] ? 1 : 0;
    }
    return usedUp / (double) types;
  }
}
