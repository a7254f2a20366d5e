package storyrod.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import storyrod.drawing.Scene.Item;
import storyrod.geometry.Solid;

/**
 * Times hidden-line removal, warm, of ever more boxes in one room, beside n log n times the mean
 * number of faces that an edge's image meets: the last column should not grow.
 */
public final class HiddenLinesBenchmark {
  private static final int ROUNDS = 3;

  private HiddenLinesBenchmark() {}

  /** Prints the median for each number of solids. */
  public static void run() {
    System.out.printf(
        Locale.ROOT,
        "%n%-16s %8s %10s %16s%n",
        "hidden lines of",
        "ms",
        "overlaps",
        "ns / n log n o");
    for (int count : new int[] {125, 250, 500, 1000, 2000}) {
      Scene scene = boxes(count);
      double ms = median(scene);
      double overlaps = overlaps(scene);
      double share = ms * 1e6 / (count * Math.log(count) / Math.log(2) * overlaps);
      System.out.printf(Locale.ROOT, "%-16d %8.1f %10.1f %16.1f%n", count, ms, overlaps, share);
    }
  }

  private static double median(Scene scene) {
    double[] millis = new double[ROUNDS];
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      long start = System.nanoTime();
      HiddenLines.of(scene, View.USUAL).seen().forEach(Seen::workOut);
      millis[Math.max(0, round)] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(millis);
    return millis[ROUNDS / 2];
  }

  /** How many faces lie before an edge, in the mean of all edges. */
  private static double overlaps(Scene scene) {
    HiddenLines lines = HiddenLines.of(scene, View.USUAL);
    long edges = 0;
    long faces = 0;
    for (int i = 0; i < scene.items().size(); i++) {
      for (Edges.Edge edge : lines.edges(i)) {
        edges++;
        faces += lines.inFrontOf(List.of(edge.line().from(), edge.line().to())).size();
      }
    }
    return (double) faces / edges;
  }

  private static Scene boxes(int count) {
    Random random = new Random(7);
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double[] at = random.doubles(3, -1000, 1000).toArray();
      double[] size = random.doubles(3, 10, 90).toArray();
      items.add(
          SeenSolids.item(
              Solid.of(
                  SeenSolids.box(
                      at[0], at[0] + size[0], at[1], at[1] + size[1], at[2], at[2] + size[2]))));
    }
    return new Scene(items);
  }

  /** Only this benchmark. */
  public static void main(String[] args) {
    run();
  }
}
