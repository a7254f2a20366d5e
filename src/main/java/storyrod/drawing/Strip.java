package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Element;

/**
 * Cells in rows across the paper, and beside them what is enlarged, where it has room.
 *
 * @param cells at least one
 * @param beside none or one figure at the right
 */
record Strip(List<StripCell> cells, Optional<CutFigure> beside) {
  /** The height of a lone row at most, and of one of several, in mm. */
  static final double MOST_MM = 60;

  private static final double MOST_OF_SEVERAL_MM = 30;

  /** The height at which a part can be made out. */
  static final double LEAST_MM = 20;

  /** So many stand side by side at most. */
  private static final int IN_A_ROW = 3;

  /** Between what stands side by side. */
  private static final double GAP_MM = 5;

  Strip {
    cells = List.copyOf(cells);
  }

  /** The cells row by row, as many in each as can be. */
  private List<List<StripCell>> rows() {
    int rows = Math.ceilDiv(cells.size(), IN_A_ROW);
    int columns = Math.ceilDiv(cells.size(), rows);
    List<List<StripCell>> all = new ArrayList<>();
    for (int i = 0; i < cells.size(); i += columns) {
      all.add(cells.subList(i, Math.min(i + columns, cells.size())));
    }
    return all;
  }

  /** At no width the least height at which the cells can be made out. */
  double heightMm(double widthMm) {
    List<List<StripCell>> rows = rows();
    double cells = rows.stream().mapToDouble(row -> heightMm(row, widthMm, rows.size())).sum();
    double beside = this.beside.map(each -> each.size().heightMm()).orElse(0.0);
    return widthMm <= 0 ? cells : Math.max(cells, Math.min(beside, MOST_MM));
  }

  private double heightMm(List<StripCell> row, double widthMm, int rows) {
    double least = row.stream().mapToDouble(StripCell::leastMm).max().orElse(0);
    double most = Math.max(least, rows == 1 ? MOST_MM : MOST_OF_SEVERAL_MM);
    List<Double> widths = widths(row, widthMm, beside);
    double height = 0;
    for (int i = 0; i < row.size() && widthMm > 0; i++) {
      height = Math.max(height, row.get(i).heightMm(widths.get(i)));
    }
    return Math.clamp(height, least, most);
  }

  /** The strip in a room: rows as high as they want to be, for what the room has. */
  List<Element> in(Size room) {
    Optional<CutFigure> shown = beside.filter(each -> each.size().heightMm() <= room.heightMm());
    List<Element> elements = new ArrayList<>();
    List<List<StripCell>> rows = rows();
    double wanted =
        rows.stream().mapToDouble(row -> heightMm(row, room.widthMm(), rows.size())).sum();
    double top = 0;
    for (List<StripCell> row : rows) {
      double share = heightMm(row, room.widthMm(), rows.size()) / wanted;
      double bottom = top + share * room.heightMm();
      elements.addAll(in(row, widths(row, room.widthMm(), shown), new Bounds(0, top, 0, bottom)));
      top = bottom;
    }
    shown.ifPresent(each -> elements.add(each.in(room)));
    return elements;
  }

  private static List<Element> in(List<StripCell> row, List<Double> widths, Bounds at) {
    List<Element> elements = new ArrayList<>();
    double left = at.left();
    for (int i = 0; i < row.size(); i++) {
      Bounds cell = new Bounds(left, at.top(), left + widths.get(i), at.bottom());
      elements.addAll(row.get(i).in(cell));
      left = cell.right() + GAP_MM;
    }
    return elements;
  }

  /** The widths of the cells of a row: longer ones take more. */
  private static List<Double> widths(
      List<StripCell> row, double widthMm, Optional<CutFigure> beside) {
    double room =
        widthMm
            - (row.size() - 1) * GAP_MM
            - beside.map(each -> each.size().widthMm() + GAP_MM).orElse(0.0);
    double all = row.stream().mapToDouble(Strip::weight).sum();
    return row.stream().map(each -> room * weight(each) / all).toList();
  }

  private static double weight(StripCell cell) {
    return Math.sqrt(cell.shape());
  }
}
