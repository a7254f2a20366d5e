package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.TileGrid.Cell;
import storyrod.words.Words;

/**
 * Draws the sheets over which templates are laid. Neighbouring sheets share a strip, in which the
 * same register marks stand on both; columns have letters, rows have numbers.
 */
final class TemplateTiles {
  private static final double EDGE = 5;
  private static final double FOOT = 25;
  private static final double CELL = 4;
  private static final double BESIDE_BARS = 12;

  private final TemplateBoard board;
  private final TileGrid grid;
  private final Bounds frame;
  private final Size page;
  private final Words words;

  private TemplateTiles(TemplateBoard board, Size page, Words words) {
    this.board = board;
    this.grid = board.grid();
    this.page = page;
    this.words = words;
    Size window = board.window();
    this.frame = new Bounds(EDGE, EDGE, EDGE + window.widthMm(), EDGE + window.heightMm());
  }

  /** What of a page shows the templates; beside it are the frame's margin and the foot. */
  static Size window(Size page) {
    return new Size(page.widthMm() - 2 * EDGE, page.heightMm() - 2 * EDGE - FOOT);
  }

  static TemplateSheets of(TemplateBoard board, Size page, Words words) {
    TemplateTiles tiles = new TemplateTiles(board, page, words);
    return new TemplateSheets(board.shapes(), board.held().stream().map(tiles::tile).toList());
  }

  private TemplateTile tile(Cell cell) {
    Bounds shown = grid.shown(cell);
    At origin = new At(shown.left() - EDGE, shown.top() - EDGE);
    List<FullSize> shapes =
        board.shapes().stream().filter(shape -> TemplateBoard.holds(shown, shape)).toList();
    Drawing drawing =
        new Drawing(
            "template-" + named(board.shapes()) + "-" + cell.letter(),
            page.widthMm(),
            page.heightMm(),
            Optional.of(new Scale(1, 1)),
            elements(cell, shapes, origin));
    return new TemplateTile(cell.letter(), shapes, drawing, origin);
  }

  private static String named(List<FullSize> shapes) {
    return shapes.stream().map(FullSize::name).collect(Collectors.joining("-"));
  }

  private List<Element> elements(Cell cell, List<FullSize> shapes, At origin) {
    List<FullSize> here = shapes.stream().map(shape -> moved(shape, origin)).toList();
    Paper paper = new Paper();
    paper.add(frame());
    marks(cell, origin).forEach(paper::add);
    for (FullSize shape : here) {
      paper.add(
          new Group(
              "template-" + shape.name(), shape.mark().mark(), shape.mark().title(), lines(shape)));
    }
    TemplateLabels labels = new TemplateLabels(paper, frame, words);
    here.forEach(shape -> labels.place(shape, cell.letter()));
    return Stream.concat(paper.elements().stream(), foot(cell).stream()).toList();
  }

  private static FullSize moved(FullSize shape, At origin) {
    return shape.mapped(at -> at.plus(-origin.x(), -origin.y()));
  }

  private Element frame() {
    At corner = new At(frame.left(), frame.top());
    double wide = frame.width();
    double high = frame.height();
    return new Line(
        Role.DIMENSION,
        List.of(
            corner, corner.plus(wide, 0), corner.plus(wide, high), corner.plus(0, high), corner));
  }

  private List<Element> marks(Cell cell, At origin) {
    return RegisterMarks.of(board).of(cell).stream()
        .map(at -> at.plus(-origin.x(), -origin.y()))
        .flatMap(at -> RegisterMarks.drawn(at).stream())
        .toList();
  }

  private List<Element> lines(FullSize shape) {
    List<Element> lines = new ArrayList<>();
    shape.lines().forEach(path -> add(new Line(Role.THIN, path.points()), lines));
    shape.freeSides().forEach(path -> add(new Line(Role.HIDDEN, path.points()), lines));
    for (FullSize.Hole hole : shape.holes()) {
      List<Line> cross = Bores.centre(hole.centre(), hole.diameterMm() / 2 + 1);
      cross.forEach(arm -> add(arm, lines));
    }
    return lines;
  }

  /** Adds what of a line the sheet shows. */
  private void add(Line line, List<Element> lines) {
    Clipping.inside(line.points(), frame).forEach(chain -> lines.add(new Line(line.role(), chain)));
  }

  /** The sheet's letter, the bars, and a map of all sheets with this one filled. */
  private List<Element> foot(Cell cell) {
    double top = frame.bottom() + 3;
    List<Element> foot = new ArrayList<>(CheckBars.at(new At(EDGE + BESIDE_BARS, top), words));
    foot.add(new Text(TextStyle.TITLE, new At(EDGE, top + 8), Anchor.START, true, cell.letter()));
    double side = Math.min(CELL, Math.min(20.0 / grid.rows(), 45.0 / grid.columns()));
    for (Cell each : board.held()) {
      double right = (grid.columns() - each.column()) * side;
      At corner = new At(frame.right() - right, top + 1 + each.row() * side);
      List<At> ring =
          List.of(corner, corner.plus(side, 0), corner.plus(side, side), corner.plus(0, side));
      foot.add(new Drawing.Area(each.equals(cell) ? Tone.INK : Tone.WHITE, List.of(ring)));
      List<At> closed = new ArrayList<>(ring);
      closed.add(corner);
      foot.add(new Line(Role.DIMENSION, closed));
    }
    return foot;
  }
}
