package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
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

  /** Pivots after which rounding has added up so far that a start from nothing is better. */
  private static final int MOST_PIVOTS = 2_000;

  private final int types;
  private final int rows;
  private final List<Kind> kinds;
  private final double unit;
  private final List<Pattern> patterns = new ArrayList<>();

  /** The types of each pattern, and how many there are of each. */
  private final List<int[]> typesOf = new ArrayList<>();

  private final List<int[]> countsOf = new ArrayList<>();
  private int entries;
  private final double[][] inverse;
  private final double[] basic;
  private final int[] basis;

  /** Rows whose column in the basis stands for too much of it, which is to end. */
  private final boolean[] negated;

  private final double[] right;
  private final double[] duals;
  private int pivots = MOST_PIVOTS;

  Master(Enlarged sizes) {
    types = sizes.types.size();
    kinds = sizes.kinds;
    rows = types + kinds.size();
    unit = 1.0 / Math.max(1, kinds.stream().mapToLong(Kind::worth).max().orElse(1));
    inverse = new double[rows][rows];
    basic = new double[rows];
    basis = new int[rows];
    negated = new boolean[rows];
    right = new double[rows];
    duals = new double[rows];
  }

  void add(Pattern pattern) {
    int[] counts = pattern.counts();
    int[] used = IntStream.range(0, types).filter(type -> counts[type] > 0).toArray();
    patterns.add(pattern);
    typesOf.add(used);
    countsOf.add(Arrays.stream(used).map(type -> counts[type]).toArray());
    entries += used.length + 1;
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
      if (basis[row] >= 0 && !negated[row]) {
        uses[basis[row]] += Math.max(0, basic[row]);
      }
    }
    return uses;
  }

  private double costOfBasic(int row) {
    if (negated[row]) {
      return LOSS;
    }
    if (basis[row] >= 0) {
      return cost(patterns.get(basis[row]).kind());
    }
    return basis[row] == NO_PATTERN && row < types ? LOSS : 0;
  }

  /**
   * Solves for some parts and stock, over the patterns there are, from where the last call ended;
   * counts its work.
   */
  void solve(int[] wanted, int[] left, StepCount steps) {
    for (int row = 0; row < rows; row++) {
      // A little more than whole numbers keeps pivots from standing still.
      double whole = row < types ? wanted[row] : Math.min(1e6, left[row - types]);
      right[row] = whole + 1e-7 * (row + 1);
    }
    if (pivots >= MOST_PIVOTS) {
      startFromNothing();
    } else {
      goOn();
    }
    for (int turn = 0; turn < 20 * rows; turn++) {
      price();
      steps.look(1 + (2 * rows * rows + entries) / 20);
      int entering = entering();
      if (entering == Integer.MIN_VALUE || !pivot(entering)) {
        return;
      }
      pivots++;
    }
    price();
  }

  /** Nothing is cut yet: each part is missing at a loss, all stock is left. */
  private void startFromNothing() {
    for (int row = 0; row < rows; row++) {
      Arrays.fill(inverse[row], 0);
      inverse[row][row] = 1;
      basis[row] = NO_PATTERN;
      negated[row] = false;
      basic[row] = right[row];
    }
    pivots = 0;
  }

  /** Keeps the basis; what would be used less than never is turned round, at a loss. */
  private void goOn() {
    for (int row = 0; row < rows; row++) {
      double sum = 0;
      for (int i = 0; i < rows; i++) {
        sum += inverse[row][i] * right[i];
      }
      basic[row] = sum;
      if (sum < 0) {
        negated[row] ^= true;
        basic[row] = -sum;
        for (int i = 0; i < rows; i++) {
          inverse[row][i] = -inverse[row][i];
        }
      }
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
      double reduced = reduced(i);
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

  private double reduced(int pattern) {
    int kind = patterns.get(pattern).kind();
    double reduced = cost(kind) - duals[types + kind];
    int[] used = typesOf.get(pattern);
    int[] counts = countsOf.get(pattern);
    for (int i = 0; i < used.length; i++) {
      reduced -= counts[i] * duals[used[i]];
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
    negated[leaving] = false;
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
    int kind = patterns.get(entering).kind();
    int[] used = typesOf.get(entering);
    int[] counts = countsOf.get(entering);
    for (int row = 0; row < rows; row++) {
      double[] line = inverse[row];
      double sum = line[types + kind];
      for (int i = 0; i < used.length; i++) {
        sum += counts[i] * line[used[i]];
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
