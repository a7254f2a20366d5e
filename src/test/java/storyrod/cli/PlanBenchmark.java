package storyrod.cli;

import java.util.Arrays;
import java.util.Locale;
import storyrod.build.Planner;
import storyrod.description.Description;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/**
 * Times the build order of ever larger pieces, warm: a wall of cabinets that all go together on one
 * level, each with a drawer of its own. Each round plans a piece that was built anew.
 */
final class PlanBenchmark {
  private static final int ROUNDS = 5;

  private PlanBenchmark() {}

  /** Prints the median for each size, and how it grows with the number of parts. */
  static void run() {
    System.out.printf(Locale.ROOT, "%n%-24s %8s %8s%n", "build order of parts", "ms", "growth");
    double before = 0;
    for (int cabinets : new int[] {2, 6, 15, 30, 60}) {
      double ms = median(CheckBenchmark.description(cabinets));
      String growth = before == 0 ? "" : String.format(Locale.ROOT, "%8.1f", ms / before);
      System.out.printf(Locale.ROOT, "%-24d %8.1f %s%n", 10 * cabinets, ms, growth);
      before = ms;
    }
  }

  private static double median(Description description) {
    double[] millis = new double[ROUNDS];
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      Piece piece = PieceBuilder.build(description, new Diagnostics()).orElseThrow();
      long start = System.nanoTime();
      Planner.plan(piece, new Diagnostics()).orElseThrow();
      millis[Math.max(0, round)] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(millis);
    return millis[ROUNDS / 2];
  }

  /** Only this benchmark. */
  public static void main(String[] args) {
    run();
  }
}
