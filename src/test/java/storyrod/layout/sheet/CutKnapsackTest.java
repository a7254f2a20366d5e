package storyrod.layout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.layout.Budget;
import storyrod.layout.Jobs;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutPlan;
import storyrod.layout.search.Layouts;

class CutKnapsackTest {
  private static final long ANY_TURNS = Long.MAX_VALUE;
  private static final long FEW_TURNS = 200;

  private final Random random = new Random(7);
  private final StepCount steps = new StepCount(Budget.ofSteps(Long.MAX_VALUE));

  @Test
  void itIsWorthWhatCutsAtEveryPlaceAreWorth() {
    for (int i = 0; i < 200; i++) {
      Enlarged sizes = sizes();
      int[] worths = worths(sizes);
      CutKnapsack knapsack = CutKnapsack.within(sizes, 0, ANY_TURNS).orElseThrow();
      assertTrue(knapsack.isExact());
      assertEquals(byEveryCut(sizes, worths), knapsack.fill(worths, steps), () -> text(sizes));
      assertEquals(byEveryCut(sizes, worths), worth(knapsack.pattern(), worths));
      assertReal(sizes, knapsack.pattern());
    }
  }

  @Test
  void inCellsItTellsNoLessThanThereIsAndFindsSheetsThatAreReal() {
    int coarse = 0;
    for (int i = 0; i < 200; i++) {
      Enlarged sizes = sizes();
      int[] worths = worths(sizes);
      Optional<CutKnapsack> perhaps = CutKnapsack.within(sizes, 0, FEW_TURNS);
      if (perhaps.isEmpty()) {
        continue;
      }
      CutKnapsack knapsack = perhaps.get();
      coarse += knapsack.isExact() ? 0 : 1;
      int most = byEveryCut(sizes, worths);
      assertTrue(knapsack.fill(worths, steps) >= most, () -> text(sizes));
      CutKnapsack above = knapsack.roundedUp();
      int found = above.fill(worths, steps);
      assertTrue(found <= most);
      assertEquals(found, worth(above.pattern(), worths));
      assertReal(sizes, above.pattern());
    }
    assertTrue(coarse > 60, "coarse " + coarse);
  }

  @Test
  void noBoundIsAboveALayoutOfManyCopies() {
    int raised = 0;
    for (int i = 0; i < 20; i++) {
      LayoutJob job = job(30);
      LayoutPlan plan = Layouts.plan(job, Budget.ofSteps(100_000));
      assertTrue(plan.lowerBound() <= plan.value());
      raised += plan.lowerBound() > new LayoutBounds(new Enlarged(job)).best() ? 1 : 0;
    }
    assertTrue(raised > 3, "raised " + raised);
  }

  private Enlarged sizes() {
    return new Enlarged(job(3));
  }

  private LayoutJob job(int mostCopies) {
    List<Blank> parts = new ArrayList<>();
    for (int i = 2 + random.nextInt(4); i > 0; i--) {
      int length = 4 + random.nextInt(20);
      int copies = 1 + random.nextInt(mostCopies);
      parts.add(Jobs.part(length, 4 + random.nextInt(14), copies, random.nextBoolean()));
    }
    return Jobs.job(
        random.nextInt(2), Jobs.sheet(24 + random.nextInt(20), 18 + random.nextInt(20), 0), parts);
  }

  private int[] worths(Enlarged sizes) {
    return sizes.types.stream()
        .mapToInt(type -> Math.toIntExact(type.area()) + random.nextInt(60))
        .toArray();
  }

  /** The same by trying every whole place for a cut. */
  private static int byEveryCut(Enlarged sizes, int[] worths) {
    int length = sizes.kinds.getFirst().length();
    int width = sizes.kinds.getFirst().width();
    int[][] most = new int[length + 1][width + 1];
    for (int x = 1; x <= length; x++) {
      for (int y = 1; y <= width; y++) {
        int best = 0;
        for (int type = 0; type < worths.length; type++) {
          Enlarged.Type of = sizes.types.get(type);
          boolean fits = of.upright() && of.length() <= x && of.width() <= y;
          fits |= of.turned() && of.width() <= x && of.length() <= y;
          best = fits ? Math.max(best, worths[type]) : best;
        }
        for (int cut = 1; cut < x; cut++) {
          best = Math.max(best, most[cut][y] + most[x - cut][y]);
        }
        for (int cut = 1; cut < y; cut++) {
          best = Math.max(best, most[x][cut] + most[x][y - cut]);
        }
        most[x][y] = best;
      }
    }
    return most[length][width];
  }

  private static int worth(Pattern pattern, int[] worths) {
    return IntStream.range(0, worths.length).map(i -> pattern.counts()[i] * worths[i]).sum();
  }

  private static void assertReal(Enlarged sizes, Pattern pattern) {
    CutTree tree = pattern.tree();
    Pattern read = Pattern.of(0, tree, pattern.counts().length);
    assertEquals(
        IntStream.of(pattern.counts()).boxed().toList(),
        IntStream.of(read.counts()).boxed().toList());
    assertTrue(tree.used() <= sizes.kinds.getFirst().area());
    for (int node = 0; node < tree.end(); node += tree.step()) {
      assertTrue(!tree.exists(node) || tree.rest(node) >= 0, "a node holds more than its room");
    }
  }

  private static String text(Enlarged sizes) {
    return sizes.types + " on " + sizes.kinds;
  }
}
