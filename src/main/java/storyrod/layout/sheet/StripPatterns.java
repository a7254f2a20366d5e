package storyrod.layout.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import storyrod.layout.sheet.Enlarged.Kind;
import storyrod.layout.sheet.Enlarged.Type;

/**
 * Finds the piece of stock whose parts are worth most, cut in strips, the strips in columns, the
 * columns in parts: knapsacks within knapsacks (Gilmore and Gomory 1965). How many parts of a type
 * are wanted is heeded within a column, a strip and the sheet, each by itself; what is too much in
 * all is left out in the end.
 *
 * <p>Sizes are counted in cells of a grid, which is exact where the unit is coarse enough.
 */
final class StripPatterns {
  private static final int MOST_CELLS = 8_192;
  private static final int MOST_TIMES_ANEW = 4;

  /** A part in one position, by its cells along the strips and across them. */
  private record Position(int type, boolean turned, int along, int across) {}

  private final List<Type> types;
  private final Kind kind;
  private final int kindNumber;
  private final int axis;
  private final StepCount steps;
  private final int cellAlong;
  private final int cellAcross;
  private final int along;
  private final int wholeAcross;
  private final BestFit fit;
  private int across;
  private double[] values = new double[0];

  private int[] wanted = new int[0];
  private List<Position> positions = List.of();
  private int[] lengths = new int[0];
  private int[] heights = new int[0];
  private Knapsack[] columns = new Knapsack[0];
  private Knapsack[] strips = new Knapsack[0];
  private int[][] stripColumns = new int[0][];
  private int[][] columnPositions = new int[0][];
  private Knapsack sheet = new Knapsack(0);

  StripPatterns(Enlarged sizes, int kindNumber, int stripsAlong, StepCount steps) {
    this.types = sizes.types;
    this.kindNumber = kindNumber;
    this.kind = sizes.kinds.get(kindNumber);
    this.axis = stripsAlong;
    this.steps = steps;
    int wholeAlong = axis == 0 ? kind.length() : kind.width();
    int width = axis == 0 ? kind.width() : kind.length();
    cellAlong = Math.ceilDiv(wholeAlong, MOST_CELLS);
    cellAcross = Math.ceilDiv(width, MOST_CELLS);
    along = wholeAlong / cellAlong;
    wholeAcross = width / cellAcross;
    fit = new BestFit(sizes, new Chance(1), steps);
  }

  /**
   * The best value, before what is too much is left out.
   *
   * @param each what a part of each type is worth
   * @param most how many of each are wanted
   */
  double find(double[] each, int[] most) {
    across = wholeAcross;
    values = each;
    wanted = most.clone();
    return find();
  }

  private double find() {
    positions =
        IntStream.range(0, types.size())
            .filter(type -> values[type] > 0 && wanted[type] > 0)
            .boxed()
            .flatMap(type -> List.of(position(type, false), position(type, true)).stream())
            .filter(this::isAllowed)
            .filter(each -> each.along <= along && each.across <= across)
            .toList();
    lengths = distinct(positions.stream().mapToInt(Position::along).toArray());
    heights = distinct(positions.stream().mapToInt(Position::across).toArray());
    fillColumns();
    fillStrips();
    sheet = new Knapsack(across);
    for (int i = 0; i < heights.length; i++) {
      sheet.add(heights[i], strips[i].value(along), mostStrips(i));
      steps.look(across / 8);
    }
    return sheet.value(across);
  }

  private boolean isAllowed(Position position) {
    Type type = types.get(position.type);
    return type.allows(position.turned);
  }

  int kind() {
    return kindNumber;
  }

  private Position position(int type, boolean turned) {
    Type of = types.get(type);
    int x = of.length(turned);
    int y = of.width(turned);
    return new Position(
        type,
        turned,
        Math.ceilDiv(axis == 0 ? x : y, cellAlong),
        Math.ceilDiv(axis == 0 ? y : x, cellAcross));
  }

  private static int[] distinct(int[] sizes) {
    TreeSet<Integer> found = new TreeSet<>();
    for (int size : sizes) {
      found.add(size);
    }
    return found.stream().mapToInt(i -> i).toArray();
  }

  private void fillColumns() {
    columns = new Knapsack[lengths.length];
    columnPositions = new int[lengths.length][];
    int highest = heights.length == 0 ? 0 : heights[heights.length - 1];
    for (int i = 0; i < lengths.length; i++) {
      int length = lengths[i];
      columns[i] = new Knapsack(highest);
      columnPositions[i] =
          IntStream.range(0, positions.size())
              .filter(each -> positions.get(each).along <= length)
              .toArray();
      for (int each : columnPositions[i]) {
        Position position = positions.get(each);
        columns[i].add(position.across, values[position.type], wanted[position.type]);
        steps.look(highest / 8);
      }
    }
  }

  private void fillStrips() {
    strips = new Knapsack[heights.length];
    stripColumns = new int[heights.length][];
    for (int i = 0; i < heights.length; i++) {
      int height = heights[i];
      strips[i] = new Knapsack(along);
      stripColumns[i] =
          IntStream.range(0, lengths.length).filter(j -> isOfUse(j, height)).toArray();
      for (int j : stripColumns[i]) {
        strips[i].add(lengths[j], columns[j].value(height), mostColumns(j, height));
        steps.look(along / 8);
      }
    }
  }

  /** A column is of use if it is worth more than a shorter one. */
  private boolean isOfUse(int column, int height) {
    double value = columns[column].value(height);
    return value > 0 && (column == 0 || value > columns[column - 1].value(height));
  }

  private int mostColumns(int column, int height) {
    return most(columnParts(column, height, new int[types.size()]));
  }

  private int mostStrips(int strip) {
    return most(stripParts(strip));
  }

  private int[] stripParts(int strip) {
    int[] parts = new int[types.size()];
    for (int x = along; strips[strip].last(x) != Knapsack.NOTHING; ) {
      int thing = strips[strip].last(x);
      columnParts(stripColumns[strip][thing], heights[strip], parts);
      x -= strips[strip].size(thing);
    }
    return parts;
  }

  private int[] columnParts(int column, int height, int[] parts) {
    for (int y = height; columns[column].last(y) != Knapsack.NOTHING; ) {
      int thing = columns[column].last(y);
      parts[positions.get(columnPositions[column][thing]).type]++;
      y -= columns[column].size(thing);
    }
    return parts;
  }

  /** How often parts may be there; once at least, for what is too much is left out later. */
  private int most(int[] parts) {
    int most = Integer.MAX_VALUE;
    for (int i = 0; i < parts.length; i++) {
      most = parts[i] == 0 ? most : Math.min(most, wanted[i] / parts[i]);
    }
    return Math.max(1, most);
  }

  /**
   * The pattern that was found, with no part more than is wanted. Strips of which there are too
   * many give way to others, found anew for what is left; then parts are put where they still fit.
   */
  Pattern pattern() {
    CutTree tree = new CutTree();
    tree.clear(kind.length(), kind.width(), 1 - axis);
    for (int again = 0; again < MOST_TIMES_ANEW && addStrips(tree); again++) {
      find();
    }
    fill(tree);
    return Pattern.of(kindNumber, tree, types.size());
  }

  /** Adds the strips that were found, and says whether some were too many. */
  private boolean addStrips(CutTree tree) {
    boolean first = true;
    boolean tooMany = false;
    for (int y = across; sheet.last(y) != Knapsack.NOTHING; ) {
      int strip = sheet.last(y);
      y -= sheet.size(strip);
      if (first || isWithin(stripParts(strip))) {
        addStrip(tree, strip, wanted);
        across -= heights[strip];
        first = false;
      } else {
        tooMany = true;
      }
    }
    return tooMany;
  }

  private boolean isWithin(int[] parts) {
    return IntStream.range(0, parts.length).allMatch(i -> parts[i] <= wanted[i]);
  }

  private void fill(CutTree tree) {
    OpenSheet[] alone = {new OpenSheet()};
    alone[0].kind = kindNumber;
    alone[0].tree = tree;
    IntStream.range(0, types.size())
        .filter(type -> wanted[type] > 0 && values[type] > 0)
        .boxed()
        .sorted(Comparator.comparingDouble(type -> -values[type] / types.get(type).area()))
        .forEach(type -> fill(type, alone));
  }

  private void fill(int type, OpenSheet[] alone) {
    while (wanted[type] > 0 && fit.insert(type, alone, 0, 1)) {
      wanted[type]--;
    }
  }

  private void addStrip(CutTree tree, int strip, int[] left) {
    int node = tree.strip(CutTree.ROOT, heights[strip] * cellAcross);
    for (int x = along; strips[strip].last(x) != Knapsack.NOTHING; ) {
      int thing = strips[strip].last(x);
      addColumn(tree, node, stripColumns[strip][thing], heights[strip], left);
      x -= strips[strip].size(thing);
    }
    tree.finish(node);
  }

  private void addColumn(CutTree tree, int strip, int column, int height, int[] left) {
    int node = tree.strip(strip, lengths[column] * cellAlong);
    for (int y = height; columns[column].last(y) != Knapsack.NOTHING; ) {
      int thing = columns[column].last(y);
      Position position = positions.get(columnPositions[column][thing]);
      if (left[position.type] > 0) {
        left[position.type]--;
        Type type = types.get(position.type);
        boolean turned = position.turned;
        tree.place(node, position.type, type.length(turned), type.width(turned), turned, true);
      }
      y -= columns[column].size(thing);
    }
    tree.finish(node);
  }
}
