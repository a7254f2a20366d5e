package storyrod.layout.length;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * The rows of the linear relaxation: one for each size, to be covered, and one for each stock of
 * which there is not as much as wanted, whose use counts negative against what there is.
 */
final class Rows {
  private static final double DISTURBANCE = 1e-6;

  private final Bars bars;
  private final int[] rowOfBar;
  private final double[] disturbance;

  /** A column of the relaxation, without zeros. */
  record Column(int[] rows, int[] counts) {}

  Rows(Bars bars) {
    this.bars = bars;
    rowOfBar = new int[bars.bars().size()];
    int row = bars.kinds();
    for (int bar = 0; bar < rowOfBar.length; bar++) {
      rowOfBar[bar] = bars.bars().get(bar).isLimited() ? row++ : -1;
    }
    disturbance = new SplittableRandom(1).doubles(row, DISTURBANCE / 2, DISTURBANCE).toArray();
  }

  int count() {
    return disturbance.length;
  }

  /** The row of a stock, or less than zero if there is as much as wanted. */
  int ofBar(int bar) {
    return rowOfBar[bar];
  }

  Column column(Pattern pattern) {
    int[] all = pattern.counts(bars.kinds());
    int[] used = IntStream.range(0, all.length).filter(size -> all[size] > 0).toArray();
    int[] counts = Arrays.stream(used).map(size -> all[size]).toArray();
    int row = rowOfBar[pattern.stock()];
    return row < 0 ? new Column(used, counts) : new Column(with(used, row), with(counts, -1));
  }

  private static int[] with(int[] numbers, int last) {
    int[] longer = Arrays.copyOf(numbers, numbers.length + 1);
    longer[numbers.length] = last;
    return longer;
  }

  /** The right side for parts wanted and stock left, a little disturbed against standing still. */
  double[] right(int[] wanted, int[] left) {
    double[] right = disturbance.clone();
    for (int size = 0; size < wanted.length; size++) {
      right[size] += wanted[size];
    }
    for (int bar = 0; bar < rowOfBar.length; bar++) {
      if (rowOfBar[bar] >= 0) {
        right[rowOfBar[bar]] = -left[bar] - disturbance[rowOfBar[bar]];
      }
    }
    return right;
  }
}
