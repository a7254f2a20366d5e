package storyrod.layout.length;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import storyrod.layout.Budget;

/** Jobs sawn backwards from full pieces, so that as many pieces are enough and none is spare. */
class RefillTest {
  private static final int LENGTH = 1000;
  private static final int JOBS = 30;

  @Test
  void whatItFindsIsCompleteAndFits() {
    Random random = new Random(11);
    int found = 0;
    for (int i = 0; i < JOBS; i++) {
      int pieces = 3 + random.nextInt(12);
      Bars bars = sawnBackwards(random, pieces);
      Meter meter = Meter.of(Budget.ofSteps(50_000));
      List<Pattern> start = new Greedy(bars, meter).best(bars.wanted(), bars.available()).get();
      List<Pattern> better = new Refill(bars, start, pieces, new SplittableRandom(1), meter).run();
      if (!better.isEmpty()) {
        found++;
        assertGives(bars, better);
        assertTrue(better.size() <= pieces);
      }
    }
    assertTrue(found > JOBS * 2 / 3, "found " + found);
  }

  @Test
  void itFindsNothingWhereThereIsNothing() {
    Bars bars = bars(new TreeMap<>(java.util.Map.of(400L, 5)));
    Meter meter = Meter.of(Budget.ofSteps(2_000));
    List<Pattern> start = new Greedy(bars, meter).best(bars.wanted(), bars.available()).get();
    assertTrue(new Refill(bars, start, 2, new SplittableRandom(1), meter).run().isEmpty());
  }

  private static Bars sawnBackwards(Random random, int pieces) {
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

  private static Bars bars(TreeMap<Long, Integer> counts) {
    return new Bars(
        counts.keySet().stream().mapToLong(size -> size).toArray(),
        counts.values().stream().mapToInt(count -> count).toArray(),
        List.of(new Bars.Bar(new long[] {LENGTH}, Integer.MAX_VALUE, 1)));
  }

  private static void assertGives(Bars bars, List<Pattern> patterns) {
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
