package storyrod.layout.sheet;

import java.util.Arrays;
import storyrod.layout.sheet.Enlarged.Kind;

/**
 * Which of two layouts is better: the one that leaves less out, then takes less, then leaves the
 * larger offcut, then asks for fewer saw settings and turns.
 */
final class Merit {
  private final Enlarged sizes;
  private final double unit;
  private final long kerf;
  private int[] settings = new int[64];

  Merit(Enlarged sizes) {
    this.sizes = sizes;
    this.unit = 1.0 / sizes.kinds.stream().mapToLong(Kind::area).max().orElse(1);
    this.kerf = Math.ceilDiv(sizes.kerfTicks, sizes.unit);
  }

  boolean isBetter(Found one, Found other) {
    if (one.value() == Long.MAX_VALUE || other.value() == Long.MAX_VALUE) {
      return one.value() < other.value();
    }
    long less = areaOut(other.out()) - areaOut(one.out());
    if (less != 0 || one.value() != other.value()) {
      return less > 0 || less == 0 && one.value() < other.value();
    }
    return trouble(one) < trouble(other);
  }

  private long areaOut(int[] out) {
    long area = 0;
    for (int i = 0; i < out.length; i++) {
      area += out[i] * sizes.types.get(i).area();
    }
    return area;
  }

  /** What is left to be wished of a layout, the less the better. */
  private double trouble(Found found) {
    double largest = 0;
    int work = 0;
    for (Found.Laid laid : found.sheets()) {
      largest = Math.max(largest, offcut(laid.tree()));
      work += work(laid.tree());
    }
    return trouble(largest, work);
  }

  /** A millionth of a sheet is no reason for one more setting. */
  static double trouble(double largest, int work) {
    return -Math.rint(1e5 * largest) + 1e-6 * work;
  }

  /** The largest offcut as a share of the largest piece of stock. */
  double offcut(CutTree tree) {
    long largest = 0;
    for (int node = 0; node < tree.end(); node += tree.step()) {
      if (tree.exists(node) && tree.rest(node) > kerf) {
        int across = tree.size(node, 1 - tree.axis(node));
        largest = Math.max(largest, (tree.rest(node) - kerf) * (across - kerf));
      }
    }
    return unit * largest;
  }

  /** Fence settings and pieces to be turned on the saw. */
  int work(CutTree tree) {
    int count = 0;
    int turns = 0;
    for (int node = 0; node < tree.end(); node += tree.step()) {
      if (tree.exists(node) && !tree.isPart(node)) {
        turns++;
        int axis = tree.axis(node);
        for (int child = tree.first(node); child != CutTree.NONE; child = tree.next(child)) {
          count = add(count, 2 * tree.size(child, axis) + axis);
        }
      }
    }
    return 100 * count + turns;
  }

  private int add(int count, int setting) {
    for (int i = 0; i < count; i++) {
      if (settings[i] == setting) {
        return count;
      }
    }
    if (count == settings.length) {
      settings = Arrays.copyOf(settings, 2 * count);
    }
    settings[count] = setting;
    return count + 1;
  }
}
