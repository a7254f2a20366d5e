package storyrod.layout.sheet;

/**
 * Makes a complete layout one with a larger offcut and less work at the saw, on stock that takes no
 * more: pieces are taken apart and their parts put back, and what is no worse is kept.
 */
final class Polish implements Search.Way {
  private static final int ONE_SKIPPED_IN = 10;
  private static final int MOST_SHEETS = 60;

  private final Bench bench;
  private final Merit merit;
  private final StepCount steps;
  private final RuinAndRecreate moves;

  Polish(Bench bench, Merit merit, StepCount steps) {
    this.bench = bench;
    this.merit = merit;
    this.steps = steps;
    moves = new RuinAndRecreate(bench, new Proof(0), steps);
  }

  @Override
  public Found look(Found found, long mostSteps) {
    if (found.sheets().size() > MOST_SHEETS) {
      return found;
    }
    moves.hold(found, ONE_SKIPPED_IN);
    double now = trouble();
    long until = steps.taken() + mostSteps;
    while (steps.taken() < until && !steps.over()) {
      moves.change();
      double after = bench.isComplete() ? trouble() : Double.POSITIVE_INFINITY;
      if (after <= now) {
        now = after;
        bench.keep();
      } else {
        bench.goBack();
      }
    }
    return bench.found();
  }

  private double trouble() {
    double largest = 0;
    int work = 0;
    for (OpenSheet sheet : bench.sheets) {
      if (sheet.kind != OpenSheet.CLOSED) {
        largest = Math.max(largest, merit.offcut(sheet.tree));
        work += merit.work(sheet.tree);
      }
    }
    steps.look(10 * bench.sheets.length);
    return Merit.trouble(largest, work);
  }
}
