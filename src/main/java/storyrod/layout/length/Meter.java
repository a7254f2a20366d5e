package storyrod.layout.length;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import storyrod.layout.Budget;

/** Counts what a search has done, so that it ends after the same work on every machine. */
final class Meter {
  /** A step is about a microsecond; an operation is one turn of an inner loop. */
  private static final long OPERATIONS_A_STEP = 1500;

  private static final long OPERATIONS_BETWEEN_QUESTIONS = 200_000;

  private final Optional<Meter> whole;
  private final BooleanSupplier stop;
  private long left;
  private long untilAsked = OPERATIONS_BETWEEN_QUESTIONS;
  private boolean ended;

  private Meter(Optional<Meter> whole, long operations, BooleanSupplier stop) {
    this.whole = whole;
    this.left = operations;
    this.stop = stop;
  }

  static Meter of(Budget budget) {
    long most = Long.MAX_VALUE / OPERATIONS_A_STEP;
    return new Meter(
        Optional.empty(), Math.min(most, budget.steps()) * OPERATIONS_A_STEP, budget.stop());
  }

  /** A share of this meter, which counts for the whole too. */
  Meter share(long steps) {
    return new Meter(Optional.of(this), steps * OPERATIONS_A_STEP, () -> false);
  }

  void spend(long operations) {
    left -= operations;
    untilAsked -= operations;
    whole.ifPresent(each -> each.spend(operations));
    if (untilAsked < 0) {
      untilAsked = OPERATIONS_BETWEEN_QUESTIONS;
      ended |= stop.getAsBoolean();
    }
  }

  long stepsLeft() {
    return Math.max(0, left / OPERATIONS_A_STEP);
  }

  boolean isEnded() {
    return ended || left < 0 || whole.isPresent() && whole.get().isEnded();
  }
}
