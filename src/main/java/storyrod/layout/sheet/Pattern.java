package storyrod.layout.sheet;

/**
 * One piece of stock laid out, as a column of a linear program.
 *
 * @param counts how many parts of each type it gives
 */
record Pattern(int kind, CutTree tree, int[] counts) {
  static Pattern of(int kind, CutTree tree, int types) {
    int[] counts = new int[types];
    for (int node = 0; node < tree.end(); node += tree.step()) {
      if (tree.exists(node) && tree.isPart(node) && !tree.isUseless(node)) {
        counts[tree.part(node)]++;
      }
    }
    return new Pattern(kind, tree, counts);
  }

  /** Whether it gives no more than is wanted. */
  boolean isWithin(int[] wanted) {
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > wanted[i]) {
        return false;
      }
    }
    return true;
  }
}
