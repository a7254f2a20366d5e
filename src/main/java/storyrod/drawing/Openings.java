package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * The free rectangles between blocks in one plane: the bays of a case seen from its front, the room
 * between the legs of a table.
 *
 * <ol>
 *   <li>The ends of all blocks cut the plane into cells; a cell is full or free.
 *   <li>A free stretch shorter than 6 mm is a gap, not an opening, and counts as full.
 *   <li>Free cells that hang together and reach no open side of the plane are one opening: the
 *       largest rectangle in them.
 * </ol>
 */
final class Openings {
  private static final Length GAP = Length.mm(6);
  private static final Length SMALLEST = Length.mm(20);

  private final List<Length> acrossAt;
  private final List<Length> upAt;
  private final boolean[][] full;
  private final Set<Side> closed;

  /** What lies in the plane: from where to where it reaches on the plane's two axes. */
  record Block(Range across, Range up) {}

  /** A free rectangle. */
  record Opening(Range across, Range up) {
    double areaMm2() {
      return across.length().toMm() * up.length().toMm();
    }
  }

  /**
   * The openings between blocks.
   *
   * @param plane the rectangle that is looked at
   * @param closed on which of its sides nothing is open: below, where a floor is
   */
  Openings(List<Block> blocks, Block plane, Set<Side> closed) {
    this.closed = closed.isEmpty() ? EnumSet.noneOf(Side.class) : EnumSet.copyOf(closed);
    this.acrossAt = steps(plane.across, blocks.stream().map(Block::across).toList());
    this.upAt = steps(plane.up, blocks.stream().map(Block::up).toList());
    this.full = new boolean[acrossAt.size() - 1][upAt.size() - 1];
    for (Block block : blocks) {
      for (int i = 0; i < full.length; i++) {
        for (int j = 0; j < full[i].length; j++) {
          full[i][j] |= block.across.contains(across(i)) && block.up.contains(up(j));
        }
      }
    }
    closeGaps();
  }

  private static List<Length> steps(Range plane, List<Range> ranges) {
    TreeSet<Length> steps = new TreeSet<>(List.of(plane.from(), plane.to()));
    for (Range range : ranges) {
      for (Length at : List.of(range.from(), range.to())) {
        if (plane.contains(at)) {
          steps.add(at);
        }
      }
    }
    return List.copyOf(steps);
  }

  private Range across(int i) {
    return new Range(acrossAt.get(i), acrossAt.get(i + 1));
  }

  private Range up(int j) {
    return new Range(upAt.get(j), upAt.get(j + 1));
  }

  private void closeGaps() {
    List<int[]> gaps = new ArrayList<>();
    for (int i = 0; i < full.length; i++) {
      for (int j = 0; j < full[i].length; j++) {
        if (!full[i][j]
            && (run(i, j, true).length().isShorterThan(GAP)
                || run(i, j, false).length().isShorterThan(GAP))) {
          gaps.add(new int[] {i, j});
        }
      }
    }
    gaps.forEach(gap -> full[gap[0]][gap[1]] = true);
  }

  /** The stretch of cells like this one, across or up. */
  private Range run(int i, int j, boolean across) {
    int from = across ? i : j;
    int to = from + 1;
    int count = across ? full.length : full[i].length;
    while (from > 0 && same(i, j, across, from - 1)) {
      from--;
    }
    while (to < count && same(i, j, across, to)) {
      to++;
    }
    List<Length> steps = across ? acrossAt : upAt;
    return new Range(steps.get(from), steps.get(to));
  }

  private boolean same(int i, int j, boolean across, int other) {
    return (across ? full[other][j] : full[i][other]) == full[i][j];
  }

  /** The openings from the left, from below. */
  List<Opening> all() {
    boolean[][] seen = new boolean[full.length][full[0].length];
    List<Opening> openings = new ArrayList<>();
    for (int i = 0; i < full.length; i++) {
      for (int j = 0; j < full[i].length; j++) {
        if (!full[i][j] && !seen[i][j]) {
          List<int[]> cells = together(i, j, seen);
          if (cells.stream().noneMatch(this::isOutside)) {
            largest(cells).ifPresent(openings::add);
          }
        }
      }
    }
    return openings.stream()
        .filter(each -> !each.across.length().isShorterThan(SMALLEST))
        .filter(each -> !each.up.length().isShorterThan(SMALLEST))
        .sorted(
            Comparator.comparing((Opening each) -> each.across.from())
                .thenComparing(each -> each.up.from()))
        .toList();
  }

  private List<int[]> together(int i, int j, boolean[][] seen) {
    List<int[]> cells = new ArrayList<>(List.of(new int[] {i, j}));
    seen[i][j] = true;
    for (int n = 0; n < cells.size(); n++) {
      int[] cell = cells.get(n);
      for (int[] step : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
        int x = cell[0] + step[0];
        int y = cell[1] + step[1];
        boolean inside = x >= 0 && y >= 0 && x < full.length && y < full[0].length;
        if (inside && !full[x][y] && !seen[x][y]) {
          seen[x][y] = true;
          cells.add(new int[] {x, y});
        }
      }
    }
    return cells;
  }

  private boolean isOutside(int[] cell) {
    return cell[0] == 0 && !closed.contains(Side.LEFT)
        || cell[0] == full.length - 1 && !closed.contains(Side.RIGHT)
        || cell[1] == 0 && !closed.contains(Side.BELOW)
        || cell[1] == full[0].length - 1 && !closed.contains(Side.ABOVE);
  }

  private Optional<Opening> largest(List<int[]> cells) {
    boolean[][] own = new boolean[full.length][full[0].length];
    cells.forEach(cell -> own[cell[0]][cell[1]] = true);
    Optional<Opening> best = Optional.empty();
    for (int from = 0; from < full.length; from++) {
      boolean[] free = new boolean[full[0].length];
      java.util.Arrays.fill(free, true);
      for (int to = from; to < full.length; to++) {
        for (int j = 0; j < free.length; j++) {
          free[j] &= own[to][j];
        }
        Range across = new Range(acrossAt.get(from), acrossAt.get(to + 1));
        for (Range up : runs(free)) {
          Opening opening = new Opening(across, up);
          if (best.isEmpty() || opening.areaMm2() > best.get().areaMm2()) {
            best = Optional.of(opening);
          }
        }
      }
    }
    return best;
  }

  private List<Range> runs(boolean[] free) {
    List<Range> runs = new ArrayList<>();
    int from = 0;
    while (from < free.length) {
      int to = from;
      while (to < free.length && free[to]) {
        to++;
      }
      if (to > from) {
        runs.add(new Range(upAt.get(from), upAt.get(to)));
      }
      from = to + 1;
    }
    return runs;
  }

  /** What stands at an opening's lower end on one axis, half way along the other. */
  Optional<Range> before(Opening opening, boolean across) {
    int i = indexOf(acrossAt, across ? opening.across.from() : opening.across.middle());
    int j = indexOf(upAt, across ? opening.up.middle() : opening.up.from());
    int x = across ? i - 1 : i;
    int y = across ? j : j - 1;
    return x < 0 || y < 0 ? Optional.empty() : Optional.of(run(x, y, across));
  }

  /** The number of the cell that starts at or before a place. */
  private static int indexOf(List<Length> steps, Length at) {
    return IntStream.range(0, steps.size() - 1)
        .filter(i -> !steps.get(i).isLongerThan(at))
        .max()
        .orElse(0);
  }
}
