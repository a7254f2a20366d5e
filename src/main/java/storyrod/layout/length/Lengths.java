package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import storyrod.layout.Budget;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Missing;

/** Lays out jobs in which only lengths matter. */
public final class Lengths {
  /** Steps that a layout may take to become tidier even where the search took all. */
  private static final long FEWEST_TIDYING_STEPS = 30_000;

  private static final long MOST_TIDYING_STEPS = 300_000;

  private final Measured measured;
  private final Budget budget;

  private Lengths(LayoutJob job, Budget budget) {
    this.measured = new Measured(job);
    this.budget = budget;
  }

  /**
   * Whether a job is one of lengths: all parts are as wide as all stock is between its trims.
   *
   * <p>That parts may turn does not matter then: turned parts side by side take a piece of stock as
   * long as the stock is wide, and end to end, not turned, they take no more. Only beside a defect
   * that leaves part of the width clear could a turned part gain.
   */
  public static boolean fits(LayoutJob job) {
    List<Blank> blanks = job.blanks();
    boolean mayTurn = blanks.stream().anyMatch(Blank::mayTurn);
    return !blanks.isEmpty()
        && job.stock().stream()
            .allMatch(
                stock ->
                    blanks.stream()
                            .allMatch(blank -> blank.width().equals(Measured.clearWidth(stock)))
                        && !(mayTurn && Measured.hasPartlyClearWidth(stock)));
  }

  /**
   * The best layouts found within a budget, of a job for which {@link #fits} holds. Equal jobs,
   * steps and seeds give equal plans, and more steps never a worse one.
   */
  public static LayoutPlan plan(LayoutJob job, Budget budget) {
    return new Lengths(job, budget).plan();
  }

  private LayoutPlan plan() {
    Bars bars = measured.bars();
    if (bars.kinds() == 0) {
      return new LayoutPlan(List.of(), missing(new int[0]), 0, 0);
    }
    Meter meter = Meter.of(budget);
    Incumbent incumbent = new Solver(bars, meter, Solver.NO_GOAL).run(budget.seed());
    if (!incumbent.isThere()) {
      return withoutSome(bars);
    }
    List<Pattern> tidy =
        new Offcuts(bars, tidyingMeter(meter.stepsLeft())).longest(incumbent.patterns());
    long bound = measured.hasNarrowDefects() ? narrowBound(incumbent) : incumbent.bound();
    return plan(tidy, new int[bars.kinds()], bound);
  }

  private Meter tidyingMeter(long left) {
    long steps = Math.clamp(left, FEWEST_TIDYING_STEPS, MOST_TIDYING_STEPS);
    return Meter.of(new Budget(steps, budget.seed(), budget.stop()));
  }

  /**
   * With defects narrower than the blade parts beside one may lie closer than the search thinks.
   */
  private long narrowBound(Incumbent incumbent) {
    return Math.min(incumbent.price(), SizeBounds.best(measured.barsAtMost()));
  }

  /** As many as greedy methods get out of stock that does not give all. */
  private LayoutPlan withoutSome(Bars bars) {
    List<Bars.Bar> more = new ArrayList<>(bars.bars());
    more.add(new Bars.Bar(new long[] {bars.widest()}, Integer.MAX_VALUE, 1));
    Bars enough = new Bars(bars.sizes(), bars.wanted(), more);
    int[] kinds = new int[more.size()];
    Arrays.setAll(kinds, kind -> kind);
    List<Pattern> all =
        BestFit.fill(enough, bars.wanted(), enough.available(), kinds).orElseThrow();
    int[] missing = new int[bars.kinds()];
    List<Pattern> real = new ArrayList<>();
    for (Pattern pattern : all) {
      if (pattern.stock() < bars.bars().size()) {
        real.add(pattern);
      } else {
        int[] counts = pattern.counts(missing.length);
        Arrays.setAll(missing, size -> missing[size] + counts[size]);
      }
    }
    return plan(real, missing, SizeBounds.best(bars.withoutLimits()));
  }

  private LayoutPlan plan(List<Pattern> patterns, int[] missing, long bound) {
    Sawing sawing = new Sawing(measured);
    List<LayoutPlan.Sawn> pieces = SawOrder.of(patterns).stream().map(sawing::saw).toList();
    return new LayoutPlan(pieces, missing(missing), measured.bars().price(patterns), bound);
  }

  private List<Missing> missing(int[] countOfSize) {
    List<Missing> missing = new ArrayList<>();
    measured
        .tooLong()
        .forEach(blank -> missing.add(new Missing(blank, measured.count(blank), false)));
    measured
        .last(countOfSize)
        .forEach((blank, count) -> missing.add(new Missing(blank, count, true)));
    return missing;
  }
}
