package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.words.Words;

/**
 * Cells in rows across the paper, and beside them what is enlarged, where it has room. So many rows
 * are drawn as have room; what is not drawn is named below.
 *
 * @param cells at least one
 * @param beside none or one figure at the right
 * @param always so many of the cells are drawn in any room
 */
record Strip(List<StripCell> cells, Optional<CutFigure> beside, int always, Words words) {
  /** The height of a lone row at most, and of one of several, in mm. */
  static final double MOST_MM = 60;

  private static final double MOST_OF_SEVERAL_MM = 30;

  /** The height at which a part can be made out. */
  static final double LEAST_MM = 20;

  /** So many stand side by side at most. */
  static final int IN_A_ROW = 3;

  /** Between what stands side by side. */
  private static final double GAP_MM = 5;

  private static final double EDGE_MM = 1;

  Strip {
    cells = List.copyOf(cells);
  }

  /** The first cells row by row, as many in each as can be. */
  private List<List<StripCell>> rows(int count, int inARow) {
    int rows = Math.ceilDiv(count, inARow);
    int columns = Math.ceilDiv(count, rows);
    List<List<StripCell>> all = new ArrayList<>();
    for (int i = 0; i < count; i += columns) {
      all.add(cells.subList(i, Math.min(i + columns, count)));
    }
    return all;
  }

  private static int inARow(double widthMm) {
    return Strips.isNarrow(widthMm) ? 1 : IN_A_ROW;
  }

  private int least(double widthMm) {
    return Strips.isNarrow(widthMm) ? 1 : Math.min(always, cells.size());
  }

  private Optional<CutFigure> beside(double widthMm) {
    return beside.filter(any -> !Strips.isNarrow(widthMm));
  }

  /**
   * At no width the least height at which the cells can be made out; in a column beside sentences
   * what the first of them fills.
   */
  double heightMm(double widthMm) {
    boolean isLeast = widthMm <= 0 || Strips.isNarrow(widthMm);
    int count = isLeast ? least(widthMm) : cells.size();
    double beside = beside(widthMm).map(each -> each.size().heightMm()).orElse(0.0);
    double high = heightMm(rows(count, inARow(widthMm)), widthMm) + othersMm(count, widthMm);
    return widthMm <= 0 ? high : Math.max(high, Math.min(beside, MOST_MM));
  }

  private double heightMm(List<List<StripCell>> rows, double widthMm) {
    return rows.stream().mapToDouble(row -> heightMm(row, widthMm, rows.size())).sum();
  }

  private double heightMm(List<StripCell> row, double widthMm, int rows) {
    double least = row.stream().mapToDouble(StripCell::leastMm).max().orElse(0);
    double most = Math.max(least, rows == 1 ? MOST_MM : MOST_OF_SEVERAL_MM);
    List<Double> widths = widths(row, widthMm, beside(widthMm));
    double height = 0;
    for (int i = 0; i < row.size() && widthMm > 0; i++) {
      height = Math.max(height, row.get(i).heightMm(widths.get(i)));
    }
    return Math.clamp(height, least, most);
  }

  private double othersMm(int count, double widthMm) {
    return others(count, widthMm).size() * SmallLines.LINE_MM;
  }

  /** The lines that name what is not drawn. */
  private List<String> others(int count, double widthMm) {
    List<String> marks =
        cells.subList(count, cells.size()).stream()
            .flatMap(cell -> cell.marks().stream())
            .distinct()
            .toList();
    List<String> lines = Strips.others(marks, words);
    return Strips.isNarrow(widthMm) ? SmallLines.within(widthMm - 2 * EDGE_MM, lines) : lines;
  }

  /** How many cells a room has room for: all of them, or as many as full rows hold. */
  private int drawn(Size room) {
    int inARow = inARow(room.widthMm());
    int least = least(room.widthMm());
    int full = (cells.size() - 1) / inARow * inARow;
    return IntStream.concat(
            IntStream.of(cells.size()), IntStream.iterate(full, n -> n > least, n -> n - inARow))
        .filter(count -> leastMm(count, room.widthMm()) <= room.heightMm() + 1e-6)
        .findFirst()
        .orElse(least);
  }

  private double leastMm(int count, double widthMm) {
    return heightMm(rows(count, inARow(widthMm)), 0) + othersMm(count, widthMm);
  }

  /**
   * The strip in a room: rows as high as they want to be, for what the room has. Where that is more
   * than these rows want and not enough for one more, the drawing is lower than its room.
   */
  Drawing drawn(String name, Size room) {
    double wide = room.widthMm();
    int count = drawn(room);
    double high = room.heightMm() - othersMm(count, wide);
    Optional<CutFigure> shown =
        beside(wide).filter(each -> each.size().heightMm() <= room.heightMm());
    List<Element> elements = new ArrayList<>();
    List<List<StripCell>> rows = rows(count, inARow(wide));
    double least = heightMm(rows, 0);
    double more = heightMm(rows, wide) - least;
    double share = more <= 0 ? 0 : Math.clamp((high - least) / more, 0, 1);
    double top = 0;
    for (List<StripCell> row : rows) {
      double low = heightMm(row, 0, rows.size());
      double bottom = top + low + share * (heightMm(row, wide, rows.size()) - low);
      elements.addAll(in(row, widths(row, wide, shown), new Bounds(0, top, 0, bottom)));
      top = bottom;
    }
    double aside = shown.map(each -> each.size().heightMm()).orElse(0.0);
    double filled = Math.max(top + othersMm(count, wide), aside);
    Size size = new Size(wide, Math.min(room.heightMm(), filled));
    At below = new At(EDGE_MM, size.heightMm() - EDGE_MM);
    elements.addAll(SmallLines.endingAt(below, others(count, wide)));
    shown.ifPresent(each -> elements.add(each.in(size)));
    return new Drawing(name, wide, size.heightMm(), Optional.empty(), elements);
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

  /**
   * The widths of the cells of a row: longer ones take more, but none less than its captions do, if
   * the row has room for all of these.
   */
  private static List<Double> widths(
      List<StripCell> row, double widthMm, Optional<CutFigure> beside) {
    double room =
        widthMm
            - (row.size() - 1) * GAP_MM
            - beside.map(each -> each.size().widthMm() + GAP_MM).orElse(0.0);
    List<StripCell> slim = List.of();
    List<StripCell> next = slimmer(row, slim, room);
    while (next.size() > slim.size() && next.size() < row.size()) {
      slim = next;
      next = slimmer(row, slim, room);
    }
    List<StripCell> asSlimAsCaptions = next.size() < row.size() ? slim : List.of();
    return row.stream().map(each -> width(each, row, asSlimAsCaptions, room)).toList();
  }

  /** The cells that are slimmer than their captions while some are as wide as these. */
  private static List<StripCell> slimmer(
      List<StripCell> row, List<StripCell> asSlimAsCaptions, double room) {
    return row.stream()
        .filter(
            each ->
                asSlimAsCaptions.contains(each)
                    || width(each, row, asSlimAsCaptions, room) < captionsMm(each))
        .toList();
  }

  private static double width(
      StripCell cell, List<StripCell> row, List<StripCell> asSlimAsCaptions, double room) {
    if (asSlimAsCaptions.contains(cell)) {
      return captionsMm(cell);
    }
    double taken = asSlimAsCaptions.stream().mapToDouble(Strip::captionsMm).sum();
    double all =
        row.stream()
            .filter(each -> !asSlimAsCaptions.contains(each))
            .mapToDouble(Strip::weight)
            .sum();
    return (room - taken) * weight(cell) / all;
  }

  private static double captionsMm(StripCell cell) {
    double widest =
        cell.captions().stream()
            .mapToDouble(each -> TextSetting.of(TextStyle.SMALL, each).width())
            .max()
            .orElse(0);
    return widest + 2 * EDGE_MM;
  }

  private static double weight(StripCell cell) {
    return Math.sqrt(cell.shape());
  }
}
