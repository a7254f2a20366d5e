package storyrod.layout.length;

import java.util.Arrays;

/** Sparse columns of whole numbers, each with a cost that may change. */
final class Columns {
  double[] cost = new double[256];
  private int[] start = new int[257];
  private int[] row = new int[1024];
  private int[] count = new int[1024];
  private int size;

  int size() {
    return size;
  }

  int add(int[] rows, int[] counts, double columnCost) {
    int from = start[size];
    if (size + 2 > cost.length) {
      cost = Arrays.copyOf(cost, 2 * cost.length);
      start = Arrays.copyOf(start, 2 * start.length);
    }
    while (from + rows.length > row.length) {
      row = Arrays.copyOf(row, 2 * row.length);
      count = Arrays.copyOf(count, 2 * count.length);
    }
    System.arraycopy(rows, 0, row, from, rows.length);
    System.arraycopy(counts, 0, count, from, rows.length);
    cost[size] = columnCost;
    start[size + 1] = from + rows.length;
    return size++;
  }

  double times(int column, double[] by) {
    double sum = 0;
    for (int i = start[column]; i < start[column + 1]; i++) {
      sum += count[i] * by[row[i]];
    }
    return sum;
  }

  double reduced(int column, double[] duals) {
    return cost[column] - times(column, duals);
  }

  void put(int column, int sign, double[][] matrix, int at) {
    for (int i = start[column]; i < start[column + 1]; i++) {
      matrix[row[i]][at] = sign * count[i];
    }
  }
}
