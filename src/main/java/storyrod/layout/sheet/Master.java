package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import storyrod.layout.sheet.Enlarged.Kind;

/**
 * The linear program of column generation (Gilmore and Gomory 1961): how often to use each pattern
 * so that all parts are there and the stock suffices, at least cost. It is solved by the revised
 * simplex method. Its numbers are inexact and only guide the search; no proof rests on them.
 */
final class Master {
  private static final double TINY = 1e-9;
  private static final double LOSS = 10;
  private static final int NO_PATTERN = -1;

  private final int types;
  private final int rows;
  private final List<Kind> kinds;
  private final double unit;
  private final List<Pattern> patterns = new ArrayList<>();
  private final double[][] inverse;
  private final double[] basic;
  private final int[] basis;
  private final double[] duals;

  Master(Enlarged sizes) {
    types = sizes.types.size();
    kinds = sizes.kinds;
    rows = types + kinds.size();
    unit = 1.0 / Math.max(1, kinds.stream().mapToLong(Kind::worth).max().orElse(1));
    inverse = new double[rows][rows];
    basic = new double[rows];
    basis = new int[rows];
    duals = new double[rows];
  }

  void add(Pattern pattern) {
    patterns.add(pattern);
  }

  List<Pattern> patterns() {
    return patterns;
  }

  /** What one more part of a type is worth at the solution. */
  double value(int type) {
    return Math.max(0, duals[type]);
  }

  /** How much less a new pattern of a kind has to cost than its parts are worth. */
  double gain(int kind, double value) {
    return value + duals[types + kind] - cost(kind);
  }

  private double cost(int kind) {
    return unit * kinds.get(kind).worth();
  }

  /** The cost at the solution, as a share of the dearest piece of stock. */
  double total() {
    double total = 0;
    for (int row = 0; row < rows; row++) {
      total += basic[row] * costOfBasic(row);
    }
    return total;
  }

  /** How often each pattern is used. */
  double[] uses() {
    double[] uses = new double[patterns.size()];
    for (int row = 0; row < rows; row++) {
      if (basis[row] >= 0) {
        uses[basis[row]] += Math.max(0, basic[row]);
      }
    }
    return uses;
  }

  private double costOfBasic(int row) {
    if (basis[row] >= 0) {
      return cost(patterns.get(basis[row]).kind());
    }
    return basis[row] == NO_PATTERN && row < types ? LOSS : 0;
  }

  /** Solves for some parts and stock, over the patterns there are; counts its work. */
  void solve(int[] wanted, int[] left, StepCount steps) {
    start(wanted, left);
    for (int turn = 0; turn < 20 * rows; turn++) {
      price();
      steps.look(1 + (rows * rows + patterns.size() * rows) / 20);
      int entering = entering();
      if (entering == Integer.MIN_VALUE || !pivot(entering)) {
        return;
      }
    }
    price();
  }

  /** Nothing is cut yet: each part is missing at a loss, all stock is left. */
  private void start(int[] wanted, int[] left) {
    for (int row = 0; row < rows; row++) {
      Arrays.fill(inverse[row], 0);
      inverse[row][row] = 1;
      basis[row] = NO_PATTERN;
      // A little more than whole numbers keeps pivots from standing still.
      double right = row < types ? wanted[row] : Math.min(1e6, left[row - types]);
      basic[row] = right + 1e-7 * (row + 1);
    }
  }

  private void price() {
    Arrays.fill(duals, 0);
    for (int row = 0; row < rows; row++) {
      double cost = costOfBasic(row);
      if (cost != 0) {
        double[] line = inverse[row];
        for (int i = 0; i < rows; i++) {
          duals[i] += cost * line[i];
        }
      }
    }
  }

  /** A pattern, or -2 - row for a row's slack. */
  private int entering() {
    int best = Integer.MIN_VALUE;
    double least = -1e-8;
    for (int i = 0; i < patterns.size(); i++) {
      double reduced = reduced(patterns.get(i));
      if (reduced < least) {
        least = reduced;
        best = i;
      }
    }
    for (int row = 0; row < rows; row++) {
      double reduced = row < types ? duals[row] : -duals[row];
      if (reduced < least) {
        least = reduced;
        best = -2 - row;
      }
    }
    return best;
  }

  private double reduced(Pattern pattern) {
    double reduced = cost(pattern.kind()) - duals[types + pattern.kind()];
    int[] counts = pattern.counts();
    for (int i = 0; i < types; i++) {
      reduced -= counts[i] * duals[i];
    }
    return reduced;
  }

  private boolean pivot(int entering) {
    double[] column = column(entering);
    int leaving = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int row = 0; row < rows; row++) {
      if (column[row] > TINY && basic[row] / column[row] < least) {
        least = basic[row] / column[row];
        leaving = row;
      }
    }
    if (leaving < 0) {
      return false;
    }
    exchange(leaving, column);
    basis[leaving] = entering;
    return true;
  }

  private double[] column(int entering) {
    double[] column = new double[rows];
    if (entering < 0) {
      int slack = -2 - entering;
      double sign = slack < types ? -1 : 1;
      for (int row = 0; row < rows; row++) {
        column[row] = sign * inverse[row][slack];
      }
      return column;
    }
    Pattern pattern = patterns.get(entering);
    int[] counts = pattern.counts();
    for (int row = 0; row < rows; row++) {
      double[] line = inverse[row];
      double sum = line[types + pattern.kind()];
      for (int i = 0; i < types; i++) {
        if (counts[i] != 0) {
          sum += counts[i] * line[i];
        }
      }
      column[row] = sum;
    }
    return column;
  }

  private void exchange(int leaving, double[] column) {
    double[] line = inverse[leaving];
    double by = 1 / column[leaving];
    for (int i = 0; i < rows; i++) {
      line[i] *= by;
    }
    basic[leaving] *= by;
    for (int row = 0; row < rows; row++) {
      double factor = column[row];
      if (row != leaving && factor != 0) {
        double[] other = inverse[row];
        for (int i = 0; i < rows; i++) {
          other[i] -= factor * line[i];
        }
        basic[row] = Math.max(0, basic[row] - factor * basic[leaving]);
      }
    }
  }
}
