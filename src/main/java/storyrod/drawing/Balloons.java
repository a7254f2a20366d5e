package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;

/**
 * Places balloons in a column on each side of a drawing.
 *
 * <ol>
 *   <li>Marks whose tips lie in the left half go to the left column, the others to the right one;
 *       if one side would have far more than the other, those nearest the middle change sides.
 *   <li>In a column, balloons take the height of their tips, moved apart as little as possible.
 *   <li>While two leaders cross, their balloons change places: that shortens the two leaders
 *       together, so it ends, and with no crossing left.
 * </ol>
 */
final class Balloons {
  /** The radius in mm of the ring round a mark. */
  static final double RADIUS_MM = 4;

  /** From the edge of the paper to the middle of the ring next to it. */
  static final double EDGE_MM = RADIUS_MM + 1;

  private static final double SPACING_MM = 11;

  /** How many more than half of the balloons may stand on one side. */
  private static final int UNEVEN = 2;

  private final double left;
  private final double right;
  private final double top;
  private final double bottom;

  /**
   * A mark and the point in its part that its leader ends at.
   *
   * @param count how many items of hardware it stands for, zero for parts
   */
  record Tip(String mark, At at, int count) {
    Tip(String mark, At at) {
      this(mark, at, 0);
    }
  }

  /** Columns with these x and this room from top to bottom, for the rings' centres. */
  Balloons(double left, double right, double top, double bottom) {
    this.left = left;
    this.right = right;
    this.top = top;
    this.bottom = bottom;
  }

  /** So many find room beside a picture, half of them on each side. */
  static int most(double heightMm) {
    return 2 * (1 + (int) ((heightMm - 2 * EDGE_MM) / SPACING_MM));
  }

  /** Whether so many can be pushed together beside a picture without a mark on another. */
  static boolean canStand(int count, double heightMm) {
    return Math.ceilDiv(count, 2) * RADIUS_MM <= heightMm;
  }

  /** Balloons for tips, in an order from the top left to the bottom right. */
  List<Balloon> placed(List<Tip> tips) {
    List<Tip> sorted = new ArrayList<>(tips);
    sorted.sort(Comparator.comparingDouble((Tip tip) -> tip.at().x()).thenComparing(Tip::mark));
    int split = split(sorted);
    List<Balloon> balloons = new ArrayList<>(column(sorted.subList(0, split), left));
    balloons.addAll(column(sorted.subList(split, sorted.size()), right));
    return balloons;
  }

  private int split(List<Tip> sorted) {
    double middle = (left + right) / 2;
    int split = (int) sorted.stream().filter(tip -> tip.at().x() < middle).count();
    int half = (sorted.size() + 1) / 2;
    int most = Math.max(half, Math.min((int) ((bottom - top) / SPACING_MM) + 1, half + UNEVEN));
    return Math.max(sorted.size() - most, Math.min(split, most));
  }

  private List<Balloon> column(List<Tip> tips, double x) {
    List<Tip> order = new ArrayList<>(tips);
    order.sort(Comparator.comparingDouble((Tip tip) -> tip.at().y()).thenComparing(Tip::mark));
    double[] heights = heights(order.stream().mapToDouble(tip -> tip.at().y()).toArray());
    uncross(order, heights, x);
    List<Balloon> balloons = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      Tip tip = order.get(i);
      balloons.add(new Balloon(new At(x, heights[i]), tip.at(), tip.mark(), tip.count()));
    }
    return balloons;
  }

  /** Heights at least a spacing apart that differ least, in squares, from those wished for. */
  private double[] heights(double[] wished) {
    double spacing = Math.min(SPACING_MM, (bottom - top) / Math.max(1, wished.length - 1));
    List<double[]> blocks = new ArrayList<>();
    for (int i = 0; i < wished.length; i++) {
      blocks.add(new double[] {wished[i] - i * spacing, 1});
      while (blocks.size() > 1 && blocks.get(blocks.size() - 2)[0] >= blocks.getLast()[0]) {
        double[] last = blocks.removeLast();
        double[] before = blocks.removeLast();
        double count = before[1] + last[1];
        blocks.add(new double[] {(before[0] * before[1] + last[0] * last[1]) / count, count});
      }
    }
    double[] heights = new double[wished.length];
    double lowest = bottom - (wished.length - 1) * spacing;
    int i = 0;
    for (double[] block : blocks) {
      double start = Math.max(top, Math.min(lowest, block[0]));
      for (int n = 0; n < block[1]; n++, i++) {
        heights[i] = start + i * spacing;
      }
    }
    return heights;
  }

  private static void uncross(List<Tip> order, double[] heights, double x) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < order.size(); i++) {
        for (int j = i + 1; j < order.size(); j++) {
          At one = new At(x, heights[i]);
          At two = new At(x, heights[j]);
          if (cross(one, order.get(i).at(), two, order.get(j).at())) {
            java.util.Collections.swap(order, i, j);
            changed = true;
          }
        }
      }
    }
  }

  /** Whether two stretches cross at a point inside both. */
  static boolean cross(At a, At b, At c, At d) {
    return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
  }

  private static double turn(At from, At to, At at) {
    return (to.x() - from.x()) * (at.y() - from.y()) - (to.y() - from.y()) * (at.x() - from.x());
  }
}
