package storyrod.drawing;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;

/**
 * Times exploded views, warm, of ever larger pieces: all parts opened in one view with its
 * balloons, and the views that a plan set shows, with sub-assemblies closed and opened apart. With
 * hardware.
 */
public final class ExplodedBenchmark {
  private static final int ROUNDS = 3;

  private ExplodedBenchmark() {}

  /**
   * Prints the median for each number of parts.
   *
   * @param pieces gives a piece of so many parts
   * @param rooms gives the rooms of its pages
   */
  public static void run(IntFunction<Piece> pieces, BiFunction<Piece, BuildPlan, Rooms> rooms) {
    System.out.printf(
        Locale.ROOT, "%n%-16s %12s %12s   ms%n", "exploded parts", "all opened", "as printed");
    for (int parts : new int[] {60, 120, 250, 500}) {
      Piece piece = pieces.apply(parts);
      BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
      Rooms room = rooms.apply(piece, plan);
      double opened = median(() -> ExplodedView.draw(piece, plan, room.exploded()));
      double printed = median(() -> new ExplodedViews(piece, plan, Hardware.of(piece)).draw(room));
      System.out.printf(
          Locale.ROOT, "%-16d %12.1f %12.1f%n", piece.parts().size(), opened, printed);
    }
  }

  private static double median(Supplier<?> work) {
    double[] millis = new double[ROUNDS];
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      long start = System.nanoTime();
      if (work.get() == null) {
        throw new IllegalStateException("bug: nothing drawn");
      }
      millis[Math.max(0, round)] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(millis);
    return millis[ROUNDS / 2];
  }
}
