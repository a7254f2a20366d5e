package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The sheets over which a rectangle from the origin is laid: windows of one size, each of which
 * shares a strip with its neighbours.
 */
record TileGrid(Size window, int columns, int rows) {
  /** The strip that two sheets share. */
  static final double OVERLAP = 16;

  /** The least distance of a line from the outermost windows' edges. */
  static final double INSIDE = 4;

  /** The sheets that hold a rectangle with room to spare at the right and below. */
  static TileGrid over(Bounds bounds, Size window) {
    return new TileGrid(
        window,
        count(bounds.right() + INSIDE, window.widthMm()),
        count(bounds.bottom() + INSIDE, window.heightMm()));
  }

  private static int count(double size, double window) {
    return Math.max(1, (int) Math.ceil((size - OVERLAP) / (window - OVERLAP)));
  }

  /** A sheet by its column and its row, from 0. */
  record Cell(int column, int row) {
    /** The column's letter and the row's number. */
    String letter() {
      return (char) ('A' + column % 26) + (column < 26 ? "" : "'") + (row + 1);
    }
  }

  /** All sheets, column by column. */
  List<Cell> cells() {
    List<Cell> cells = new ArrayList<>();
    for (int column = 0; column < columns; column++) {
      for (int row = 0; row < rows; row++) {
        cells.add(new Cell(column, row));
      }
    }
    return cells;
  }

  double stepX() {
    return window.widthMm() - OVERLAP;
  }

  double stepY() {
    return window.heightMm() - OVERLAP;
  }

  /** What a sheet shows. */
  Bounds shown(Cell cell) {
    double left = cell.column * stepX();
    double top = cell.row * stepY();
    return new Bounds(left, top, left + window.widthMm(), top + window.heightMm());
  }

  /** What a sheet shows that no other need show: up to the middle of what it shares. */
  Bounds own(Cell cell) {
    Bounds all = shown(cell);
    double half = OVERLAP / 2;
    return new Bounds(
        cell.column == 0 ? all.left() : all.left() + half,
        cell.row == 0 ? all.top() : all.top() + half,
        cell.column == columns - 1 ? all.right() : all.right() - half,
        cell.row == rows - 1 ? all.bottom() : all.bottom() - half);
  }
}
