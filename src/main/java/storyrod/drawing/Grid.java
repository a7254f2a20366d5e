package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
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
  private static final double LINE_MM = 3.6;
  private static final double EDGE_MM = 1;
  private static final double GAP_MM = 4;

  Grid {
    tiles = List.copyOf(tiles);
    below = List.copyOf(below);
  }

  private int rows() {
    int inARow = tiles.stream().mapToInt(Tile::inARow).min().orElse(1);
    return Math.ceilDiv(tiles.size(), inARow);
  }

  private int columns() {
    return Math.ceilDiv(tiles.size(), rows());
  }

  /** At no width the least height at which the figures can be made out. */
  double heightMm(double widthMm) {
    double least = tiles.stream().mapToDouble(Tile::leastMm).max().orElse(0);
    double most = tiles.stream().mapToDouble(Tile::mostMm).max().orElse(0);
    double wide = cellMm(widthMm) / slimmest();
    double figure = widthMm <= 0 ? least : Math.clamp(wide, least, most);
    return rows() * (figure + LINE_MM + 2 * EDGE_MM) + below.size() * LINE_MM;
  }

  /** The shape of the figure that is the highest for its width. */
  private double slimmest() {
    return tiles.stream().mapToDouble(Tile::shape).min().orElse(1);
  }

  private double cellMm(double widthMm) {
    return (widthMm - (columns() - 1) * GAP_MM) / columns();
  }

  /** The figures in a room, all rows of one height. */
  List<Element> in(Size room) {
    List<Element> elements = new ArrayList<>();
    double high = (room.heightMm() - below.size() * LINE_MM) / rows();
    double wide = cellMm(room.widthMm());
    for (int i = 0; i < tiles.size(); i++) {
      double left = i % columns() * (wide + GAP_MM);
      double top = i / columns() * high;
      elements.addAll(in(tiles.get(i), new Bounds(left, top, left + wide, top + high)));
    }
    for (int i = 0; i < below.size(); i++) {
      double y = room.heightMm() - EDGE_MM - (below.size() - 1 - i) * LINE_MM;
      elements.add(new Text(TextStyle.SMALL, new At(EDGE_MM, y), Anchor.START, true, below.get(i)));
    }
    return elements;
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
