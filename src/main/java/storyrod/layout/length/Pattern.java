package storyrod.layout.length;

import java.util.Arrays;

/**
 * What is sawn from one piece of stock.
 *
 * @param stock its place in the job's stock
 * @param spans for each of its clear spans the sizes sawn from it, the largest first
 */
record Pattern(int stock, int[][] spans) {
  static Pattern single(int stock, int[] sizes) {
    return new Pattern(stock, new int[][] {sizes});
  }

  /** How often each size is sawn. */
  int[] counts(int sizes) {
    int[] counts = new int[sizes];
    for (int[] span : spans) {
      for (int size : span) {
        counts[size]++;
      }
    }
    return counts;
  }

  /** The same pattern without what is no longer wanted; what it gives is taken from the wanted. */
  Pattern taking(int[] wanted) {
    int[][] taken = new int[spans.length][];
    for (int i = 0; i < spans.length; i++) {
      taken[i] = Arrays.stream(spans[i]).filter(size -> wanted[size]-- > 0).toArray();
    }
    for (int[] span : spans) {
      for (int size : span) {
        wanted[size] = Math.max(0, wanted[size]);
      }
    }
    return new Pattern(stock, taken);
  }

  boolean isEmpty() {
    return Arrays.stream(spans).allMatch(span -> span.length == 0);
  }
}
