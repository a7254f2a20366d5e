package storyrod.layout.length;

import java.util.Arrays;

/**
 * The revised simplex method with an explicit inverse, for a few hundred rows: least cost of
 * columns that cover a right side. Columns may join, and costs and right side may change, between
 * runs; a basis that no longer covers is mended by the negatives of its columns at a forbidding
 * cost.
 */
final class Simplex {
  private static final double TOLERANCE = 1e-9;
  private static final double SMALLEST_PIVOT = 1e-7;
  private static final int PIVOTS_BETWEEN_INVERSIONS = 300;
  private static final int COLUMNS_A_LOOK = 3000;

  /** Turns after which a run goes round in circles of rounding errors: these and ten a row. */
  private static final int MOST_PIVOTS = 1000;

  /** What covering a row without any column costs; columns cost about one. */
  static final double FORBIDDING = 1000;

  private final int rows;
  private final double[] right;
  private final double[][] inverse;
  private final double[] level;
  private final double[] duals;
  private final double[] entering;
  private final int[] basis;
  private final boolean[] negated;
  private final Columns columns = new Columns();
  private int pivots;
  private int looked;

  Simplex(double[] right) {
    rows = right.length;
    this.right = right.clone();
    inverse = new double[rows][rows];
    level = right.clone();
    duals = new double[rows];
    entering = new double[rows];
    basis = new int[rows];
    negated = new boolean[rows];
    for (int row = 0; row < rows; row++) {
      columns.add(new int[] {row}, new int[] {-1}, 0);
    }
    for (int row = 0; row < rows; row++) {
      // A row that may fall short starts with its surplus, all others with a forbidden cover.
      negated[row] = right[row] > 0;
      basis[row] = row;
      inverse[row][row] = negated[row] ? 1 : -1;
      level[row] = Math.abs(right[row]);
    }
  }

  /** Adds a column and returns its number. */
  int add(int[] rowsOf, int[] counts, double cost) {
    return columns.add(rowsOf, counts, cost);
  }

  int size() {
    return columns.size();
  }

  void cost(int column, double cost) {
    columns.cost[column] = cost;
  }

  double dual(int row) {
    return duals[row];
  }

  /** A state to come back to. */
  record Basis(int[] columns, boolean[] negated, double[][] inverse) {}

  Basis basis() {
    double[][] copy = Arrays.stream(inverse).map(double[]::clone).toArray(double[][]::new);
    return new Basis(basis.clone(), negated.clone(), copy);
  }

  /** Comes back to a state; the right side is to be set anew. */
  void restore(Basis state) {
    System.arraycopy(state.columns, 0, basis, 0, rows);
    System.arraycopy(state.negated, 0, negated, 0, rows);
    for (int row = 0; row < rows; row++) {
      System.arraycopy(state.inverse[row], 0, inverse[row], 0, rows);
    }
  }

  /** What is to be covered from now on. */
  void right(double[] newRight) {
    System.arraycopy(newRight, 0, right, 0, rows);
    findLevels();
    for (int row = 0; row < rows; row++) {
      if (level[row] < 0) {
        negate(row);
      }
    }
  }

  private void negate(int row) {
    negated[row] ^= true;
    level[row] = -level[row];
    for (int i = 0; i < rows; i++) {
      inverse[row][i] = -inverse[row][i];
    }
  }

  private double basicCost(int row) {
    return negated[row] ? FORBIDDING : columns.cost[basis[row]];
  }

  /** Runs until no known column makes the cost less; false if it has to give up before. */
  boolean solve(Meter meter) {
    findDuals();
    for (int turn = 0; turn < MOST_PIVOTS + 10 * rows && !meter.isEnded(); turn++) {
      int column = cheapest(meter);
      if (column < 0) {
        return true;
      }
      enter(column);
      int row = leaving();
      if (row < 0) {
        return true;
      }
      pivot(row, column);
      meter.spend(rows * (long) rows / 2);
      if (++pivots % PIVOTS_BETWEEN_INVERSIONS == 0) {
        invert();
        meter.spend(rows * (long) rows * rows / 8);
      }
    }
    return false;
  }

  /** A column with a low reduced cost, looked for in a part of all columns at a time. */
  private int cheapest(Meter meter) {
    int best = -1;
    double least = -TOLERANCE;
    int count = columns.size();
    for (int seen = 0; seen < count; ) {
      int look = Math.min(COLUMNS_A_LOOK, count - seen);
      for (int i = 0; i < look; i++) {
        looked = looked + 1 < count ? looked + 1 : 0;
        double reduced = columns.reduced(looked, duals);
        if (reduced < least) {
          least = reduced;
          best = looked;
        }
      }
      seen += look;
      meter.spend(look * 4L);
      if (best >= 0) {
        return best;
      }
    }
    return best;
  }

  private void enter(int column) {
    for (int row = 0; row < rows; row++) {
      entering[row] = columns.times(column, inverse[row]);
    }
  }

  private int leaving() {
    int best = -1;
    double least = Double.MAX_VALUE;
    for (int row = 0; row < rows; row++) {
      if (entering[row] > SMALLEST_PIVOT) {
        double ratio = Math.max(0, level[row]) / entering[row];
        boolean tie = ratio < least + TOLERANCE && best >= 0;
        if (ratio < least - TOLERANCE || tie && entering[row] > entering[best]) {
          least = Math.min(least, ratio);
          best = row;
        }
      }
    }
    return best;
  }

  private void pivot(int row, int column) {
    double[] pivotRow = inverse[row];
    double by = columns.reduced(column, duals) / entering[row];
    double length = Math.max(0, level[row]) / entering[row];
    for (int i = 0; i < rows; i++) {
      pivotRow[i] /= entering[row];
    }
    for (int i = 0; i < rows; i++) {
      double factor = entering[i];
      if (i != row && factor != 0) {
        subtract(inverse[i], pivotRow, factor);
        level[i] -= factor * length;
      }
    }
    level[row] = length;
    for (int i = 0; i < rows; i++) {
      duals[i] += by * entering[row] * pivotRow[i];
    }
    basis[row] = column;
    negated[row] = false;
  }

  private static void subtract(double[] from, double[] row, double factor) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= factor * row[i];
    }
  }

  private void findDuals() {
    Arrays.fill(duals, 0);
    for (int row = 0; row < rows; row++) {
      subtract(duals, inverse[row], -basicCost(row));
    }
  }

  private void findLevels() {
    for (int row = 0; row < rows; row++) {
      double sum = 0;
      for (int i = 0; i < rows; i++) {
        sum += inverse[row][i] * right[i];
      }
      level[row] = sum;
    }
  }

  /** Inverts the basis anew, by elimination, and so sheds what rounding has added up. */
  private void invert() {
    double[][] matrix = new double[rows][rows];
    for (int row = 0; row < rows; row++) {
      Arrays.fill(inverse[row], 0);
      inverse[row][row] = 1;
      columns.put(basis[row], negated[row] ? -1 : 1, matrix, row);
    }
    for (int column = 0; column < rows; column++) {
      bringUp(matrix, column);
      eliminate(matrix, column);
    }
    findLevels();
    findDuals();
  }

  private void bringUp(double[][] matrix, int column) {
    int best = column;
    for (int row = column + 1; row < rows; row++) {
      if (Math.abs(matrix[row][column]) > Math.abs(matrix[best][column])) {
        best = row;
      }
    }
    swap(matrix, best, column);
    swap(inverse, best, column);
  }

  private static void swap(double[][] matrix, int a, int b) {
    double[] row = matrix[a];
    matrix[a] = matrix[b];
    matrix[b] = row;
  }

  private void eliminate(double[][] matrix, int column) {
    double pivot = matrix[column][column];
    for (int i = 0; i < rows; i++) {
      matrix[column][i] /= pivot;
      inverse[column][i] /= pivot;
    }
    for (int row = 0; row < rows; row++) {
      double factor = matrix[row][column];
      if (row != column && factor != 0) {
        subtract(matrix[row], matrix[column], factor);
        subtract(inverse[row], inverse[column], factor);
      }
    }
  }

  /** The cost of the present cover. */
  double value() {
    double sum = 0;
    for (int row = 0; row < rows; row++) {
      sum += basicCost(row) * level[row];
    }
    return sum;
  }

  /** How often each column is used. */
  double[] levels() {
    double[] levels = new double[columns.size()];
    for (int row = 0; row < rows; row++) {
      if (!negated[row]) {
        levels[basis[row]] += level[row];
      }
    }
    return levels;
  }
}
