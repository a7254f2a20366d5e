package storyrod.layout.sheet;

import java.util.function.BooleanSupplier;
import storyrod.layout.Budget;

/** Counts the work of a search against its budget. */
final class StepCount {
  /** Looks at a free place that take about a microsecond together. */
  private static final int LOOKS_A_STEP = 100;

  private static final int ASK_EVERY = 1_000;

  private final BooleanSupplier stop;
  private final long most;
  private long looks;
  private long asked;
  private boolean stopped;

  StepCount(Budget budget) {
    stop = budget.stop();
    most = budget.steps();
  }

  void look(int times) {
    looks += times;
  }

  /** The steps that were taken. */
  long taken() {
    return looks / LOOKS_A_STEP;
  }

  /** Whether the search has to end. */
  boolean over() {
    return taken() >= most || stopped();
  }

  /** Whether the search was told to end early. */
  boolean stopped() {
    if (!stopped && taken() - asked >= ASK_EVERY) {
      asked = taken();
      stopped = stop.getAsBoolean();
    }
    return stopped;
  }
}
