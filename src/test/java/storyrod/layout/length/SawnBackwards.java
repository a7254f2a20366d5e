package storyrod.layout.length;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;

/** Jobs sawn backwards from full pieces of one stock. */
final class SawnBackwards {
  private static final int LENGTH = 1000;

  private SawnBackwards() {}

  /** Parts of some full pieces. */
  static Bars bars(Random random, int pieces) {
    TreeMap<Long, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
    for (int i = 0; i < pieces; i++) {
      long left = LENGTH;
      for (int part = random.nextInt(3); part >= 0; part--) {
        long size = 150 + random.nextInt(250);
        if (left - size >= 150) {
          counts.merge(size, 1, Integer::sum);
          left -= size;
        }
      }
      counts.merge(left, 1, Integer::sum);
    }
    return bars(counts);
  }

  static Bars bars(TreeMap<Long, Integer> counts) {
    return new Bars(
        counts.keySet().stream().mapToLong(size -> size).toArray(),
        counts.values().stream().mapToInt(count -> count).toArray(),
        List.of(new Bars.Bar(new long[] {LENGTH}, Integer.MAX_VALUE, 1)));
  }

  /** That patterns fit and give what is wanted. */
  static void assertGives(Bars bars, List<Pattern> patterns) {
    int[] given = new int[bars.kinds()];
    for (Pattern pattern : patterns) {
      assertTrue(bars.sum(pattern.spans()[0]) <= LENGTH);
      int[] counts = pattern.counts(given.length);
      for (int size = 0; size < given.length; size++) {
        given[size] += counts[size];
      }
    }
    assertArrayEquals(bars.wanted(), given);
  }
}
