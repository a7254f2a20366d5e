package storyrod.description;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class Nearest {
  private static final int LONGEST = 60;
  private static final int MOST_SEEN = 1000;
  private static final int MOST_TRIED = 500;

  private Nearest() {}

  /** The nearest of some words, if one is near enough to be a slip of the finger. */
  public static Optional<String> to(String word, Collection<String> words) {
    int allowed = Math.min(3, (word.length() + 1) / 3);
    return words.stream()
        .limit(MOST_SEEN)
        .filter(each -> Math.abs(each.length() - word.length()) <= allowed)
        .filter(each -> each.length() <= LONGEST && sharesAnEnd(word, each))
        .filter(each -> mayBeWithin(allowed, word, each))
        .limit(MOST_TRIED)
        .filter(each -> distance(word, each) <= allowed)
        .min(Comparator.comparingInt(each -> distance(word, each)));
  }

  /** Whether few enough letters of one word are missing in the other; each of them is a slip. */
  private static boolean mayBeWithin(int allowed, String one, String two) {
    int missing = 0;
    for (int i = 0; i < one.length() && missing <= allowed; i++) {
      missing += two.indexOf(one.charAt(i)) < 0 ? 1 : 0;
    }
    return missing <= allowed;
  }

  /** A quick look first: with thousands of names a full comparison with each takes too long. */
  private static boolean sharesAnEnd(String one, String two) {
    return !one.isEmpty()
        && !two.isEmpty()
        && (one.charAt(0) == two.charAt(0)
            || one.charAt(one.length() - 1) == two.charAt(two.length() - 1));
  }

  /** Letters put in, left out, exchanged, or swapped with their neighbour. */
  static int distance(String one, String two) {
    int[][] cost = new int[one.length() + 1][two.length() + 1];
    for (int i = 0; i <= one.length(); i++) {
      for (int j = 0; j <= two.length(); j++) {
        cost[i][j] =
            i == 0 || j == 0 ? i + j : step(cost, i, j, one.charAt(i - 1) == two.charAt(j - 1));
        if (i > 1 && j > 1 && swapped(one, two, i, j)) {
          cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
        }
      }
    }
    return cost[one.length()][two.length()];
  }

  private static int step(int[][] cost, int i, int j, boolean same) {
    int exchanged = cost[i - 1][j - 1] + (same ? 0 : 1);
    return Math.min(exchanged, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
  }

  private static boolean swapped(String one, String two, int i, int j) {
    return one.charAt(i - 1) == two.charAt(j - 2) && one.charAt(i - 2) == two.charAt(j - 1);
  }
}
