package storyrod.layout.length;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.layout.Budget;

class JoiningTest {
  private static final int JOBS = 30;

  @Test
  void whatItFindsIsCompleteAndFits() {
    Random random = new Random(12);
    int found = 0;
    int searched = 0;
    for (int i = 0; i < JOBS; i++) {
      int pieces = 20 + random.nextInt(20);
      Bars bars = SawnBackwards.bars(random, pieces);
      if (Joining.suits(bars)) {
        Incumbent incumbent = joined(bars, pieces);
        searched++;
        if (incumbent.isThere()) {
          found++;
          SawnBackwards.assertGives(bars, incumbent.patterns());
          assertEquals(pieces, incumbent.price());
        }
      }
    }
    assertTrue(searched > JOBS / 2, "searched " + searched);
    assertTrue(found > searched * 2 / 3, "found " + found + " of " + searched);
  }

  private static Incumbent joined(Bars bars, int pieces) {
    Meter meter = Meter.of(Budget.ofSteps(300_000));
    Incumbent incumbent = new Incumbent(bars, Solver.NO_GOAL);
    Generation generation = new Generation(bars, meter);
    generation.endExchanges();
    generation.run(meter);
    incumbent.raiseBound(pieces);
    new Joining(bars, generation, incumbent, new SplittableRandom(1)).run(meter);
    return incumbent;
  }

  @Test
  void moreStepsAreNeverWorseAndEqualOnesAreEqual() {
    Random random = new Random(13);
    for (int i = 0; i < 6; i++) {
      Bars bars = SawnBackwards.bars(random, 40);
      long before = Long.MAX_VALUE;
      for (long steps : new long[] {0, 3_000, 30_000, 1_500_000}) {
        Incumbent found = solved(bars, steps);
        assertEquals(spans(found), spans(solved(bars, steps)));
        assertTrue(found.price() <= before, "job " + i + " with " + steps);
        before = found.price();
      }
    }
  }

  private static Incumbent solved(Bars bars, long steps) {
    return new Solver(bars, Meter.of(Budget.ofSteps(steps)), Solver.NO_GOAL).run(1);
  }

  private static List<String> spans(Incumbent incumbent) {
    return incumbent.patterns().stream().map(each -> Arrays.toString(each.spans()[0])).toList();
  }

  @Test
  void whatIsJoinedComesApartAgain() {
    Bars bars = new Bars(new long[] {500, 300, 200}, new int[] {1, 2, 1}, oneLength());
    Joined joined = Joined.none(bars).with(0, 2);
    assertArrayEquals(new long[] {700, 300}, joined.bars().sizes());
    assertArrayEquals(new int[] {1, 2}, joined.bars().wanted());
    Pattern whole = joined.apart(Pattern.single(0, new int[] {0, 1}));
    assertArrayEquals(new int[] {0, 1, 2}, whole.spans()[0]);
    assertTrue(joined.allows(whole));
    assertTrue(joined.allows(Pattern.single(0, new int[] {1, 1})));
    assertFalse(joined.allows(Pattern.single(0, new int[] {0, 1})));
    assertArrayEquals(new double[] {0.75, 0.25}, joined.duals(new double[] {0.5, 0.25, 0.25}));
  }

  @Test
  void manyJoinsKeepEveryPart() {
    SplittableRandom chance = new SplittableRandom(3);
    int[] wanted = new int[40];
    Arrays.fill(wanted, 1);
    Bars bars =
        new Bars(IntStream.range(0, 40).mapToLong(i -> 90 - i).toArray(), wanted, oneLength());
    Joined joined = Joined.none(bars);
    for (int kinds = 40; kinds > 20; kinds--) {
      int a = chance.nextInt(kinds - 1);
      joined = joined.with(a, a + 1 + chance.nextInt(kinds - 1 - a));
    }
    assertEquals(bars.sumOfWanted(), joined.bars().sumOfWanted());
    int[] all = IntStream.range(0, 20).toArray();
    assertArrayEquals(
        wanted, joined.apart(Pattern.single(0, all)).counts(bars.kinds()), "each part once");
  }

  private static List<Bars.Bar> oneLength() {
    return List.of(new Bars.Bar(new long[] {1000}, Integer.MAX_VALUE, 1));
  }
}
