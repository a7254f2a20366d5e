package storyrod.layout.length;

import java.util.List;
import java.util.function.IntConsumer;

/** Patterns of which some are barred for a while, in a known order. */
final class PatternSet {
  private final Bars bars;
  private final List<Pattern> patterns;
  private final Rows.Column[] columns;
  private final boolean[] barred;
  private final int[] order;
  private int barredCount;

  PatternSet(Bars bars, Rows rows, List<Pattern> patterns) {
    this.bars = bars;
    this.patterns = patterns;
    columns = patterns.stream().map(rows::column).toArray(Rows.Column[]::new);
    barred = new boolean[columns.length];
    order = new int[columns.length];
  }

  int size() {
    return columns.length;
  }

  Pattern pattern(int i) {
    return patterns.get(i);
  }

  long price(int i) {
    return bars.bar(patterns.get(i)).price();
  }

  Rows.Column column(int i) {
    return columns[i];
  }

  /** Whether a pattern gives a size. */
  boolean holds(int i, int size) {
    for (int row : columns[i].rows()) {
      if (row == size) {
        return true;
      }
    }
    return false;
  }

  /** What the parts of a pattern are worth. */
  long worth(int i, long[] worthOfSizes) {
    Rows.Column column = columns[i];
    long sum = 0;
    for (int at = 0; at < column.rows().length; at++) {
      int row = column.rows()[at];
      sum += row < worthOfSizes.length ? column.counts()[at] * worthOfSizes[row] : 0;
    }
    return sum;
  }

  boolean fits(int i, int[] wanted, int[] left) {
    Rows.Column column = columns[i];
    boolean fits = left[patterns.get(i).stock()] > 0;
    for (int at = 0; at < column.rows().length && fits; at++) {
      int row = column.rows()[at];
      fits = row >= wanted.length || column.counts()[at] <= wanted[row];
    }
    return fits;
  }

  boolean isBarred(int i) {
    return barred[i];
  }

  /** Bars a pattern; false if it was barred before. */
  boolean bar(int i) {
    if (barred[i]) {
      return false;
    }
    barred[i] = true;
    order[barredCount++] = i;
    return true;
  }

  int mark() {
    return barredCount;
  }

  /** Frees what was barred since a mark. */
  void undo(int mark, IntConsumer freed) {
    while (barredCount > mark) {
      int i = order[--barredCount];
      barred[i] = false;
      freed.accept(i);
    }
  }
}
