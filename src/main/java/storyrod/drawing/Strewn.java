package storyrod.drawing;

import storyrod.drawing.Drawing.At;

/**
 * How many points of a drawing lie where: points strewn along its lines and round its texts are
 * counted in small squares. So most places that are taken are known for such at once.
 */
final class Strewn {
  private static final double SQUARE = 2;

  /** More than what rounding makes of a place on the paper, in mm. */
  private static final double ROUNDING = 1e-6;

  private final double left;
  private final double top;
  private final int columns;
  private final int rows;

  /** For each corner of squares, the points above and left of it. */
  private final int[] counts;

  /**
   * Strews points.
   *
   * @param bounds all lines and texts lie in it
   */
  Strewn(Bounds bounds, Iterable<Paper.Stretch> lines, Iterable<PlacedText> texts) {
    left = bounds.left();
    top = bounds.top();
    columns = squares(bounds.width());
    rows = squares(bounds.height());
    counts = new int[(columns + 1) * (rows + 1)];
    lines.forEach(line -> add(line.from(), line.to()));
    texts.forEach(this::add);
    sum();
  }

  private static int squares(double length) {
    return length > 0 ? (int) (length / SQUARE) + 1 : 1;
  }

  private void add(PlacedText text) {
    for (double y : new double[] {text.top(), text.bottom()}) {
      add(new At(text.left(), y), new At(text.right(), y));
    }
  }

  private void add(At from, At to) {
    double length = Math.max(Math.abs(to.x() - from.x()), Math.abs(to.y() - from.y()));
    int steps = (int) Math.ceil(length / SQUARE);
    for (int i = 0; i <= steps; i++) {
      double part = steps == 0 ? 0 : (double) i / steps;
      int column = (int) ((from.x() + (to.x() - from.x()) * part - left) / SQUARE);
      int row = (int) ((from.y() + (to.y() - from.y()) * part - top) / SQUARE);
      counts[at(Math.min(column, columns - 1) + 1, Math.min(row, rows - 1) + 1)]++;
    }
  }

  private int at(int column, int row) {
    return row * (columns + 1) + column;
  }

  private void sum() {
    for (int row = 1; row <= rows; row++) {
      int here = 0;
      for (int column = 1; column <= columns; column++) {
        here += counts[at(column, row)];
        counts[at(column, row)] = counts[at(column, row - 1)] + here;
      }
    }
  }

  /** Whether a point lies in it for certain. */
  boolean anyIn(PlacedText room) {
    int from = Math.max(0, (int) Math.ceil((room.left() + ROUNDING - left) / SQUARE));
    int to = Math.min(columns, (int) Math.floor((room.right() - ROUNDING - left) / SQUARE));
    int above = Math.max(0, (int) Math.ceil((room.top() + ROUNDING - top) / SQUARE));
    int below = Math.min(rows, (int) Math.floor((room.bottom() - ROUNDING - top) / SQUARE));
    return from < to
        && above < below
        && counts[at(to, below)]
                - counts[at(from, below)]
                - counts[at(to, above)]
                + counts[at(from, above)]
            > 0;
  }
}
