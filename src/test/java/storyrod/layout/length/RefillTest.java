package storyrod.layout.length;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import storyrod.layout.Budget;

/** Jobs sawn backwards from full pieces, so that as many pieces are enough and none is spare. */
class RefillTest {
  private static final int JOBS = 30;

  @Test
  void whatItFindsIsCompleteAndFits() {
    Random random = new Random(11);
    int found = 0;
    for (int i = 0; i < JOBS; i++) {
      int pieces = 3 + random.nextInt(12);
      Bars bars = SawnBackwards.bars(random, pieces);
      Meter meter = Meter.of(Budget.ofSteps(50_000));
      List<Pattern> start = new Greedy(bars, meter).best(bars.wanted(), bars.available()).get();
      List<Pattern> better = new Refill(bars, start, pieces, new SplittableRandom(1), meter).run();
      if (!better.isEmpty()) {
        found++;
        SawnBackwards.assertGives(bars, better);
        assertTrue(better.size() <= pieces);
      }
    }
    assertTrue(found > JOBS * 2 / 3, "found " + found);
  }

  @Test
  void itFindsNothingWhereThereIsNothing() {
    Bars bars = SawnBackwards.bars(new TreeMap<>(java.util.Map.of(400L, 5)));
    Meter meter = Meter.of(Budget.ofSteps(2_000));
    List<Pattern> start = new Greedy(bars, meter).best(bars.wanted(), bars.available()).get();
    assertTrue(new Refill(bars, start, 2, new SplittableRandom(1), meter).run().isEmpty());
  }
}
