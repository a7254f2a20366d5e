package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import storyrod.layout.sheet.Enlarged.Kind;
import storyrod.layout.sheet.Enlarged.Type;

/**
 * The most that parts cut from one sheet can be worth, by cuts right across in any number of
 * stages, a part as often as one likes: the recursion of Gilmore and Gomory (1966) over raster
 * points. Worths are whole numbers, so what it tells may stand in a proof.
 *
 * <p>Where the points are too many, sizes are counted in cells. Parts rounded down make what it
 * tells too much rather than too little, as a proof needs it; parts rounded up make its sheets
 * real.
 */
final class CutKnapsack {
  /** No sum of worths is to be more. */
  static final int MOST_WORTH = 1 << 30;

  private static final int MOST_CELLS = 40_000;

  /** Turns of the inner loops that take as long as a look at a place. */
  private static final int TURNS_A_LOOK = 20;

  private record Position(int type, boolean turned, int x, int y) {}

  private final Enlarged sizes;
  private final int kindNumber;
  private final int cell;
  private final boolean up;
  private final List<Position> positions = new ArrayList<>();
  private final RasterPoints xs;
  private final RasterPoints ys;
  private final int[][] most;
  private final int[][] restY;
  private int[] worths = {};

  /**
   * A knapsack with cells as small as some turns of its loops allow, or nothing if they would have
   * to be larger than a part.
   */
  static Optional<CutKnapsack> within(Enlarged sizes, int kind, long mostTurns) {
    Kind of = sizes.kinds.get(kind);
    int cell = Math.ceilDiv(Math.max(of.length(), of.width()), MOST_CELLS);
    int smallest =
        sizes.types.stream()
            .mapToInt(type -> Math.min(type.length(), type.width()))
            .min()
            .orElse(0);
    while (cell <= smallest) {
      CutKnapsack found = new CutKnapsack(sizes, kind, cell, false);
      if (found.turns() <= mostTurns) {
        return Optional.of(found);
      }
      cell += Math.ceilDiv(cell, 4);
    }
    return Optional.empty();
  }

  private CutKnapsack(Enlarged sizes, int kindNumber, int cell, boolean up) {
    this.sizes = sizes;
    this.kindNumber = kindNumber;
    this.cell = cell;
    this.up = up;
    Kind kind = sizes.kinds.get(kindNumber);
    for (int type = 0; type < sizes.types.size(); type++) {
      add(kind, type, false);
      add(kind, type, true);
    }
    xs = points(kind.length() / cell, Position::x);
    ys = points(kind.width() / cell, Position::y);
    most = new int[xs.count()][ys.count()];
    restY = new int[ys.count()][];
    for (int y = 0; y < restY.length; y++) {
      int[] rest = new int[ys.half(y) + 1];
      for (int cut = 0; cut < rest.length; cut++) {
        rest[cut] = ys.rest(y, cut);
      }
      restY[y] = rest;
    }
  }

  private void add(Kind kind, int number, boolean turned) {
    Type type = sizes.types.get(number);
    int length = type.length(turned);
    int width = type.width(turned);
    if (type.allows(turned) && length <= kind.length() && width <= kind.width()) {
      positions.add(new Position(number, turned, inCells(length), inCells(width)));
    }
  }

  private int inCells(int size) {
    return up ? Math.ceilDiv(size, cell) : size / cell;
  }

  private RasterPoints points(int length, ToIntFunction<Position> size) {
    return new RasterPoints(
        Math.max(1, length), positions.stream().mapToInt(size).distinct().toArray());
  }

  /** About how many turns its loops take. */
  long turns() {
    return (long) xs.count() * ys.count() * (xs.count() / 4 + ys.count()) / 4;
  }

  /** Whether no size is rounded. */
  boolean isExact() {
    return cell == 1;
  }

  /** The same, parts rounded up. */
  CutKnapsack roundedUp() {
    return new CutKnapsack(sizes, kindNumber, cell, true);
  }

  /** Whether a sheet that it finds can be cut; else only what it holds is of use. */
  boolean isReal() {
    return up || isExact();
  }

  /** No sheet is worth more, by the area of its worthiest part. */
  double atMost(double[] values) {
    double densest = 0;
    for (Position each : positions) {
      densest = Math.max(densest, values[each.type] / ((double) each.x * each.y));
    }
    return densest * xs.length() * ys.length();
  }

  /** The most that a sheet can be worth, with what a part of each type is. */
  int fill(int[] newWorths, StepCount steps) {
    worths = newWorths;
    for (int[] row : most) {
      Arrays.fill(row, 0);
    }
    for (Position position : positions) {
      int x = xs.reaching(position.x);
      int y = ys.reaching(position.y);
      if (x >= 0 && y >= 0) {
        most[x][y] = Math.max(most[x][y], worths[position.type]);
      }
    }
    for (int x = 1; x < most.length; x++) {
      raise(most[x], most[x - 1]);
      for (int cut = 1; cut <= xs.half(x); cut++) {
        raise(most[x], most[cut], most[xs.rest(x, cut)]);
      }
      cutAcross(most[x]);
    }
    steps.look((int) Math.min(Integer.MAX_VALUE, turns() / TURNS_A_LOOK));
    return most[most.length - 1][ys.count() - 1];
  }

  private static void raise(int[] row, int[] other) {
    for (int y = 0; y < row.length; y++) {
      row[y] = Math.max(row[y], other[y]);
    }
  }

  private static void raise(int[] row, int[] one, int[] other) {
    for (int y = 0; y < row.length; y++) {
      row[y] = Math.max(row[y], one[y] + other[y]);
    }
  }

  private void cutAcross(int[] row) {
    for (int y = 1; y < row.length; y++) {
      int best = Math.max(row[y], row[y - 1]);
      int[] rest = restY[y];
      for (int cut = 1; cut < rest.length; cut++) {
        best = Math.max(best, row[cut] + row[rest[cut]]);
      }
      row[y] = best;
    }
  }

  /** The sheet that was found last. */
  Pattern pattern() {
    Kind kind = sizes.kinds.get(kindNumber);
    CutTree tree = new CutTree();
    int[] counts = new int[worths.length];
    int x = xs.count() - 1;
    int y = ys.count() - 1;
    tree.clear(kind.length(), kind.width(), cutX(x, y) > 0 ? 0 : 1);
    build(tree, CutTree.ROOT, x, y, counts);
    return new Pattern(kindNumber, tree, counts);
  }

  private int cutX(int x, int y) {
    for (int cut = 1; cut <= xs.half(x); cut++) {
      if (most[cut][y] + most[xs.rest(x, cut)][y] == most[x][y]) {
        return cut;
      }
    }
    return 0;
  }

  private int cutY(int x, int y) {
    for (int cut = 1; cut <= ys.half(y); cut++) {
      if (most[x][cut] + most[x][ys.rest(y, cut)] == most[x][y]) {
        return cut;
      }
    }
    return 0;
  }

  private void build(CutTree tree, int node, int wholeX, int wholeY, int[] counts) {
    int x = wholeX;
    int y = wholeY;
    while (x > 0 && most[x - 1][y] == most[x][y]) {
      x--;
    }
    while (y > 0 && most[x][y - 1] == most[x][y]) {
      y--;
    }
    if (most[x][y] == 0) {
      return;
    }
    int part = part(x, y);
    if (part >= 0) {
      place(tree, node, positions.get(part), counts);
    } else {
      cut(tree, node, x, y, counts);
    }
  }

  private void place(CutTree tree, int node, Position position, int[] counts) {
    counts[position.type]++;
    if (isReal()) {
      Type type = sizes.types.get(position.type);
      boolean turned = position.turned;
      tree.place(node, position.type, type.length(turned), type.width(turned), turned, true);
    }
  }

  private void cut(CutTree tree, int node, int x, int y, int[] counts) {
    int cut = cutX(x, y);
    int axis = cut > 0 ? 0 : 1;
    boolean across = isReal() && tree.axis(node) != axis;
    int in = across ? tree.strip(node, cell * (axis == 0 ? ys.at(y) : xs.at(x))) : node;
    if (axis == 0) {
      build(tree, in, cut, y, counts);
      build(tree, in, xs.rest(x, cut), y, counts);
    } else {
      cut = cutY(x, y);
      build(tree, in, x, cut, counts);
      build(tree, in, x, ys.rest(y, cut), counts);
    }
    if (across) {
      tree.finish(in);
    }
  }

  private int part(int x, int y) {
    for (int i = 0; i < positions.size(); i++) {
      Position position = positions.get(i);
      boolean fits = position.x <= xs.at(x) && position.y <= ys.at(y);
      if (fits && worths[position.type] == most[x][y]) {
        return i;
      }
    }
    return -1;
  }
}
