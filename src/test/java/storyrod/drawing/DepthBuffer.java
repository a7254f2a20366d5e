package storyrod.drawing;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.At;

/** Pixels of 1 mm that know how near the nearest face is: a second opinion on what is seen. */
final class DepthBuffer {
  static final int SIZE = 1400;
  private static final int MIDDLE = SIZE / 2;

  private final View view;
  private final float[] nearest = new float[SIZE * SIZE];
  private final float[] second = new float[SIZE * SIZE];
  private final int[] owner = new int[SIZE * SIZE];

  DepthBuffer(View view) {
    this.view = view;
    Arrays.fill(nearest, Float.NEGATIVE_INFINITY);
    Arrays.fill(second, Float.NEGATIVE_INFINITY);
    Arrays.fill(owner, -1);
  }

  /** Fills polygons (the outer ring and openings) that lie in one plane. */
  void fill(int item, Vector3D normal, List<List<Vector3D>> rings) {
    double facing = normal.dot(view.toViewer());
    if (Math.abs(facing) < 1e-3) {
      return;
    }
    double offset = normal.dot(rings.getFirst().getFirst());
    List<List<At>> flat = rings.stream().map(r -> r.stream().map(view::project).toList()).toList();
    double low = flat.getFirst().stream().mapToDouble(At::y).min().orElseThrow();
    double high = flat.getFirst().stream().mapToDouble(At::y).max().orElseThrow();
    for (int y = (int) Math.ceil(low); y <= high; y++) {
      double[] cuts = cuts(flat, y);
      for (int i = 0; i + 1 < cuts.length; i += 2) {
        for (int x = (int) Math.ceil(cuts[i]); x <= cuts[i + 1]; x++) {
          double plane = offset - x * normal.dot(view.right()) + y * normal.dot(view.up());
          put(item, x, y, (float) (plane / facing));
        }
      }
    }
  }

  private static double[] cuts(List<List<At>> rings, double y) {
    java.util.stream.DoubleStream.Builder cuts = java.util.stream.DoubleStream.builder();
    for (List<At> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        At one = ring.get(i);
        At two = ring.get((i + 1) % ring.size());
        if (one.y() <= y != two.y() <= y) {
          cuts.add(one.x() + (y - one.y()) / (two.y() - one.y()) * (two.x() - one.x()));
        }
      }
    }
    return cuts.build().sorted().toArray();
  }

  private void put(int item, int x, int y, float depth) {
    int at = index(x, y);
    if (item == owner[at]) {
      nearest[at] = Math.max(nearest[at], depth);
    } else if (depth > nearest[at]) {
      second[at] = nearest[at];
      nearest[at] = depth;
      owner[at] = item;
    } else {
      second[at] = Math.max(second[at], depth);
    }
  }

  private static int index(int x, int y) {
    return (y + MIDDLE) * SIZE + x + MIDDLE;
  }

  /** The nearest depth at a pixel. */
  double depth(int x, int y) {
    return nearest[index(x, y)];
  }

  /** The nearest depth at a pixel among all items but one. */
  double depthWithout(int item, int x, int y) {
    return owner[index(x, y)] == item ? second[index(x, y)] : nearest[index(x, y)];
  }
}
