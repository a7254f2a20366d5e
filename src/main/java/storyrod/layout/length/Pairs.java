package storyrod.layout.length;

/** Pairs of sizes wanted once each, and how far the relaxation has them on one piece. */
final class Pairs {
  private static final double NEARLY = 1e-3;

  private final PatternSet set;
  private final int[] wanted;
  private final double[][] together;

  Pairs(int sizes, PatternSet set, int[] wanted) {
    this.set = set;
    this.wanted = wanted;
    together = new double[sizes][sizes];
  }

  /** The pair most nearly on one piece without being so, or none. */
  int[] undecided(double[] levels, int firstColumn) {
    for (int i = 0; i < set.size(); i++) {
      if (!set.isBarred(i) && levels[firstColumn + i] > NEARLY) {
        add(set.column(i).rows(), levels[firstColumn + i]);
      }
    }
    int[] best = {};
    double most = NEARLY;
    for (int a = 0; a < together.length; a++) {
      for (int b = a + 1; b < together.length; b++) {
        if (together[a][b] > most && together[a][b] < 1 - NEARLY) {
          most = together[a][b];
          best = new int[] {a, b};
        }
      }
    }
    return best;
  }

  private void add(int[] rows, double level) {
    for (int a : rows) {
      for (int b : rows) {
        if (a < b && b < wanted.length && wanted[a] == 1 && wanted[b] == 1) {
          together[a][b] += level;
        }
      }
    }
  }
}
