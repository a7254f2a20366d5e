package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.words.Words;

/**
 * Many small figures in rows across the paper, each above its caption. In a column beside sentences
 * as many rows are drawn as have room; the marks of which nothing is drawn are named below.
 *
 * @param tiles at least one
 * @param legend lines of text below all of them
 */
record Grid(List<Tile> tiles, List<String> legend, Words words) {
  /** So many figures are drawn at most. */
  private static final int MOST = 24;

  private static final double LINE_MM = SmallLines.LINE_MM;
  private static final double EDGE_MM = 1;
  private static final double GAP_MM = 4;

  /** How many times the column beside sentences goes into the paper's width. */
  private static final int IN_A_COLUMN = 3;

  Grid {
    tiles = List.copyOf(tiles);
    legend = List.copyOf(legend);
  }

  /** The first so many figures, as they stand in some width of the paper. */
  private record Laid(Grid grid, int count, double widthMm) {
    private int rows() {
      return Math.ceilDiv(count, grid.inARow(widthMm));
    }

    private int columns() {
      return Math.ceilDiv(count, rows());
    }

    private Stream<Tile> shown() {
      return grid.tiles.stream().limit(count);
    }

    private double cellMm() {
      return (widthMm - (columns() - 1) * GAP_MM) / columns();
    }

    /** The lines below: what is toned, and the marks of which nothing is drawn. */
    private List<String> below() {
      List<String> there = marks(shown()).toList();
      List<String> others =
          marks(grid.tiles.stream().skip(count))
              .distinct()
              .filter(mark -> !there.contains(mark))
              .toList();
      List<String> lines =
          Stream.concat(grid.legend.stream(), Strips.others(others, grid.words).stream()).toList();
      return Strips.isNarrow(widthMm) ? SmallLines.within(widthMm - 2 * EDGE_MM, lines) : lines;
    }

    private static Stream<String> marks(Stream<Tile> tiles) {
      return tiles.flatMap(each -> each.partMark().stream());
    }

    /** The least height at which the figures can be made out. */
    private double leastMm() {
      return heightMm(figuresMm());
    }

    private double figuresMm() {
      return shown().mapToDouble(Tile::leastMm).max().orElse(0);
    }

    private double filledMm() {
      double most = shown().mapToDouble(Tile::mostMm).max().orElse(0);
      double slimmest = shown().mapToDouble(Tile::shape).min().orElse(1);
      return heightMm(Math.clamp(cellMm() / slimmest, figuresMm(), most));
    }

    private double heightMm(double figureMm) {
      return rows() * (figureMm + LINE_MM + 2 * EDGE_MM) + below().size() * LINE_MM;
    }

    /** All rows of one height. */
    private List<Element> in(double heightMm) {
      List<String> lines = below();
      List<Element> elements = new ArrayList<>();
      double high = (heightMm - lines.size() * LINE_MM) / rows();
      double wide = cellMm();
      for (int i = 0; i < count; i++) {
        double left = i % columns() * (wide + GAP_MM);
        double top = i / columns() * high;
        Bounds cell = new Bounds(left, top, left + wide, top + high);
        elements.addAll(Grid.in(grid.tiles.get(i), cell));
      }
      elements.addAll(SmallLines.endingAt(new At(EDGE_MM, heightMm - EDGE_MM), lines));
      return elements;
    }
  }

  private int inARow(double widthMm) {
    int most = tiles.stream().limit(MOST).mapToInt(Tile::inARow).min().orElse(1);
    return Strips.isNarrow(widthMm) ? Math.ceilDiv(most, IN_A_COLUMN) : most;
  }

  private Laid all(double widthMm) {
    return new Laid(this, Math.min(MOST, tiles.size()), widthMm);
  }

  private Laid oneRow(double widthMm) {
    return new Laid(this, Math.min(inARow(widthMm), tiles.size()), widthMm);
  }

  /**
   * At no width the least height at which the figures can be made out, in a column that of a row.
   */
  double heightMm(double widthMm) {
    if (Strips.isNarrow(widthMm)) {
      return oneRow(widthMm).leastMm();
    }
    return widthMm <= 0 ? all(widthMm).leastMm() : all(widthMm).filledMm();
  }

  /** The figures in a room, no higher than they want to be. */
  Drawing drawn(String name, Size room) {
    Laid laid = Strips.isNarrow(room.widthMm()) ? inColumn(room) : all(room.widthMm());
    double high = Math.min(room.heightMm(), laid.filledMm());
    return new Drawing(name, room.widthMm(), high, Optional.empty(), laid.in(high));
  }

  /** As many full rows as have room. */
  private Laid inColumn(Size room) {
    int inARow = inARow(room.widthMm());
    Laid all = all(room.widthMm());
    int full = (all.count() - 1) / inARow * inARow;
    return Stream.concat(
            Stream.of(all),
            IntStream.iterate(full, n -> n > 0, n -> n - inARow)
                .mapToObj(n -> new Laid(this, n, room.widthMm())))
        .filter(each -> each.leastMm() <= room.heightMm() + 1e-6)
        .findFirst()
        .orElseGet(() -> oneRow(room.widthMm()));
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
