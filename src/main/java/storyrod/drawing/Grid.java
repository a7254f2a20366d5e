package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;

/**
 * Many small figures in rows across the paper, each above its caption.
 *
 * @param tiles at least one
 * @param below lines of text below all of them
 */
record Grid(List<Tile> tiles, List<String> below) {
  private static final double LINE_MM = SmallLines.LINE_MM;
  private static final double EDGE_MM = 1;
  private static final double GAP_MM = 4;

  /** How many times the column beside sentences goes into the paper's width. */
  private static final int IN_A_COLUMN = 3;

  Grid {
    tiles = List.copyOf(tiles);
    below = List.copyOf(below);
  }

  private int inARow(double widthMm) {
    int most = tiles.stream().mapToInt(Tile::inARow).min().orElse(1);
    return Strips.isNarrow(widthMm) ? Math.ceilDiv(most, IN_A_COLUMN) : most;
  }

  private int rows(double widthMm) {
    return Math.ceilDiv(tiles.size(), inARow(widthMm));
  }

  private int columns(double widthMm) {
    return Math.ceilDiv(tiles.size(), rows(widthMm));
  }

  /** At no width and in a column the least height at which the figures can be made out. */
  double heightMm(double widthMm) {
    return widthMm <= 0 || Strips.isNarrow(widthMm)
        ? heightMm(widthMm, leastMm())
        : filledMm(widthMm);
  }

  private double leastMm() {
    return tiles.stream().mapToDouble(Tile::leastMm).max().orElse(0);
  }

  private double filledMm(double widthMm) {
    double most = tiles.stream().mapToDouble(Tile::mostMm).max().orElse(0);
    return heightMm(widthMm, Math.clamp(cellMm(widthMm) / slimmest(), leastMm(), most));
  }

  private double heightMm(double widthMm, double figureMm) {
    return rows(widthMm) * (figureMm + LINE_MM + 2 * EDGE_MM) + below(widthMm).size() * LINE_MM;
  }

  /** The shape of the figure that is the highest for its width. */
  private double slimmest() {
    return tiles.stream().mapToDouble(Tile::shape).min().orElse(1);
  }

  private double cellMm(double widthMm) {
    int columns = columns(widthMm);
    return (widthMm - (columns - 1) * GAP_MM) / columns;
  }

  private List<String> below(double widthMm) {
    return Strips.isNarrow(widthMm) ? SmallLines.within(widthMm - 2 * EDGE_MM, below) : below;
  }

  /** The figures in a room, all rows of one height, and no higher than they want to be. */
  Drawing drawn(String name, Size room) {
    double wide = room.widthMm();
    Size size = new Size(wide, Math.min(room.heightMm(), filledMm(wide)));
    List<String> lines = below(wide);
    List<Element> elements = new ArrayList<>();
    double high = (size.heightMm() - lines.size() * LINE_MM) / rows(wide);
    double cell = cellMm(wide);
    for (int i = 0; i < tiles.size(); i++) {
      double left = i % columns(wide) * (cell + GAP_MM);
      double top = i / columns(wide) * high;
      elements.addAll(in(tiles.get(i), new Bounds(left, top, left + cell, top + high)));
    }
    elements.addAll(SmallLines.endingAt(new At(EDGE_MM, size.heightMm() - EDGE_MM), lines));
    return new Drawing(name, wide, size.heightMm(), Optional.empty(), elements);
  }

  private static List<Element> in(Tile tile, Bounds cell) {
    Bounds figure =
        new Bounds(
            cell.left() + EDGE_MM,
            cell.top() + EDGE_MM,
            cell.right() - EDGE_MM,
            cell.bottom() - EDGE_MM - LINE_MM);
    At under = new At(figure.left(), cell.bottom() - EDGE_MM);
    Stream<Element> caption =
        tile.captions().stream()
            .filter(each -> TextSetting.of(TextStyle.SMALL, each).width() <= cell.width())
            .findFirst()
            .map(each -> new Text(TextStyle.SMALL, under, Anchor.START, true, each))
            .map(Element.class::cast)
            .stream();
    return Stream.concat(tile.in(figure).stream(), caption).toList();
  }
}
