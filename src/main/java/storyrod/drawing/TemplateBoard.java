package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.TileGrid.Cell;

/**
 * Templates that lie beside each other on the same sheets. A template joins others where that saves
 * at least half of its sheets and cuts it into no more pieces than sheets of its own would.
 */
record TemplateBoard(List<Laid> laid, Size window) {
  /** Room between two templates for a pair of scissors, in mm. */
  private static final double BETWEEN = 8;

  TemplateBoard {
    laid = List.copyOf(laid);
  }

  /**
   * A template where it lies.
   *
   * @param bounds the rectangle round it, which costs many points of arcs to find
   */
  record Laid(FullSize shape, Bounds bounds) {
    Laid(FullSize shape) {
      this(shape, shape.bounds());
    }

    /** Moved so that it begins at a corner. */
    Laid at(At corner) {
      double right = corner.x() - bounds.left();
      double down = corner.y() - bounds.top();
      Bounds there =
          new Bounds(
              bounds.left() + right,
              bounds.top() + down,
              bounds.right() + right,
              bounds.bottom() + down);
      return new Laid(shape.mapped(at -> at.plus(right, down)), there);
    }

    Laid turned() {
      return new Laid(shape.mapped(at -> new At(at.y(), -at.x())));
    }
  }

  /** The templates as they lie. */
  List<FullSize> shapes() {
    return laid.stream().map(Laid::shape).toList();
  }

  /** All templates on as few sheets as this finds, in the order of the first on each board. */
  static List<TemplateBoard> pack(List<FullSize> shapes, Size window) {
    List<TemplateBoard> boards = new ArrayList<>();
    largestFirst(shapes, window).forEach(shape -> add(shape, window, boards));
    return boards.stream()
        .map(board -> board.inOrder(shapes))
        .sorted(Comparator.comparing(board -> index(board.shapes().getFirst(), shapes)))
        .toList();
  }

  private static List<FullSize> largestFirst(List<FullSize> shapes, Size window) {
    return shapes.stream()
        .sorted(Comparator.comparing(shape -> -alone(shape, window).sheets()))
        .toList();
  }

  private static void add(FullSize shape, Size window, List<TemplateBoard> boards) {
    TemplateBoard alone = alone(shape, window);
    Optional<TemplateBoard> best = Optional.empty();
    int least = alone.sheets() / 2 + 1;
    int at = boards.size();
    for (int i = 0; i < boards.size(); i++) {
      Optional<TemplateBoard> joined = boards.get(i).with(shape, alone.sheets());
      int more = joined.map(TemplateBoard::sheets).orElse(0) - boards.get(i).sheets();
      if (joined.isPresent() && more < least) {
        best = joined;
        least = more;
        at = i;
      }
    }
    if (best.isPresent()) {
      boards.set(at, best.get());
    } else {
      boards.add(alone);
    }
  }

  /** A template on sheets of its own, upright or lying, whichever needs fewer. */
  private static TemplateBoard alone(FullSize shape, Size window) {
    At corner = new At(TileGrid.INSIDE, TileGrid.INSIDE);
    Laid lying = new Laid(shape);
    TemplateBoard level = new TemplateBoard(List.of(lying.at(corner)), window);
    TemplateBoard upright = new TemplateBoard(List.of(lying.turned().at(corner)), window);
    return upright.sheets() <= level.sheets() ? upright : level;
  }

  /** The board with one more template where it takes fewest sheets more. */
  private Optional<TemplateBoard> with(FullSize shape, int pieces) {
    Laid lying = new Laid(shape);
    return Stream.of(lying, lying.turned())
        .flatMap(each -> corners().map(each::at))
        .filter(this::isClear)
        .map(this::and)
        .filter(board -> board.pieces(board.laid.getLast().shape) <= pieces)
        .min(Comparator.comparing(TemplateBoard::sheets));
  }

  private TemplateBoard and(Laid further) {
    return new TemplateBoard(Stream.concat(laid.stream(), Stream.of(further)).toList(), window);
  }

  /** Where a further template may begin: beside and below those there are, and on each sheet. */
  private Stream<At> corners() {
    double inside = TileGrid.INSIDE;
    List<At> corners = new ArrayList<>();
    TileGrid grid = grid();
    for (Laid each : laid) {
      Bounds bounds = each.bounds;
      corners.add(new At(bounds.right() + BETWEEN, bounds.top()));
      corners.add(new At(bounds.left(), bounds.bottom() + BETWEEN));
      for (Cell cell : grid.cells()) {
        Bounds shown = grid.shown(cell);
        corners.add(new At(bounds.right() + BETWEEN, shown.top() + inside));
        corners.add(new At(shown.left() + inside, bounds.bottom() + BETWEEN));
      }
    }
    return corners.stream();
  }

  private boolean isClear(Laid further) {
    return laid.stream().noneMatch(other -> isNear(further.bounds, other.bounds));
  }

  private static boolean isNear(Bounds one, Bounds other) {
    double less = BETWEEN - 0.001;
    return one.left() < other.right() + less
        && other.left() < one.right() + less
        && one.top() < other.bottom() + less
        && other.top() < one.bottom() + less;
  }

  TileGrid grid() {
    Bounds bounds = Bounds.NONE;
    for (Laid each : laid) {
      bounds = bounds.with(each.bounds);
    }
    return TileGrid.over(bounds, window);
  }

  /** The sheets that hold something. */
  List<Cell> held() {
    TileGrid grid = grid();
    return grid.cells().stream()
        .filter(cell -> laid.stream().anyMatch(each -> holds(grid.own(cell), each.shape)))
        .toList();
  }

  static boolean holds(Bounds window, FullSize shape) {
    return shape.lines().stream().anyMatch(path -> Clipping.holds(window, path));
  }

  int sheets() {
    return held().size();
  }

  private long pieces(FullSize shape) {
    TileGrid grid = grid();
    return grid.cells().stream().filter(cell -> holds(grid.own(cell), shape)).count();
  }

  private TemplateBoard inOrder(List<FullSize> all) {
    return new TemplateBoard(
        laid.stream().sorted(Comparator.comparing(each -> index(each.shape, all))).toList(),
        window);
  }

  private static int index(FullSize shape, List<FullSize> all) {
    return all.stream().map(FullSize::name).toList().indexOf(shape.name());
  }
}
