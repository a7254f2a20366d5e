package storyrod.layout.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.layout.Budget;
import storyrod.layout.Jobs;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan;

/** Jobs so small that every way to cut them can be tried. */
class TinyLayoutsTest {
  private static final Budget BUDGET = Budget.ofSteps(8_000);

  @Test
  void theBestWayIsFoundAndNoBoundIsAboveIt() {
    Random random = new Random(3);
    int proved = 0;
    for (int i = 0; i < 60; i++) {
      Tiny tiny = Tiny.of(random, false);
      LayoutPlan plan = Layouts.plan(tiny.job(), BUDGET);
      long best = tiny.best();
      assertEquals(best, plan.value(), () -> "found for " + tiny);
      assertTrue(plan.lowerBound() <= best, () -> "bound " + plan.lowerBound() + " for " + tiny);
      proved += plan.proved() ? 1 : 0;
    }
    assertTrue(proved > 30, "proved " + proved);
  }

  @Test
  void besideDefectsNoBoundIsAboveTheBestWay() {
    Random random = new Random(4);
    int found = 0;
    for (int i = 0; i < 40; i++) {
      Tiny tiny = Tiny.of(random, true);
      LayoutPlan plan = Layouts.plan(tiny.job(), BUDGET);
      long best = tiny.best();
      assertEquals(best < Tiny.NEVER, plan.missing().isEmpty(), () -> "possible for " + tiny);
      if (best < Tiny.NEVER) {
        assertTrue(plan.lowerBound() <= best && best <= plan.value(), () -> "for " + tiny);
        found += plan.value() == best ? 1 : 0;
      }
    }
    assertTrue(found > 25, "found " + found);
  }

  /** Parts and stock in whole cells, a cell and the kerf being a millimetre each. */
  private record Tiny(
      int kerf, List<int[]> parts, List<Boolean> turns, List<int[]> sheets, List<int[]> defects) {
    static final long NEVER = Integer.MAX_VALUE;

    static Tiny of(Random random, boolean withDefects) {
      int kerf = random.nextInt(2);
      List<int[]> sheets = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(2); i++) {
        sheets.add(new int[] {5 + random.nextInt(4), 5 + random.nextInt(3), 3 + random.nextInt(7)});
      }
      sheets.getFirst()[0] += 2;
      List<int[]> parts = new ArrayList<>();
      List<Boolean> turns = new ArrayList<>();
      for (int i = 1 + random.nextInt(6); i > 0; i--) {
        parts.add(new int[] {1 + random.nextInt(5), 1 + random.nextInt(4)});
        turns.add(random.nextBoolean());
      }
      List<int[]> defects = new ArrayList<>();
      for (int i = withDefects ? 1 + random.nextInt(2) : 0; i > 0; i--) {
        defects.add(new int[] {random.nextInt(6), random.nextInt(4), 1, 1});
      }
      return new Tiny(kerf, parts, turns, sheets, defects);
    }

    LayoutJob job() {
      List<Blank> blanks = new ArrayList<>();
      for (int i = 0; i < parts.size(); i++) {
        blanks.add(Jobs.part(parts.get(i)[0], parts.get(i)[1], turns.get(i)));
      }
      List<Area> areas = defects.stream().map(d -> Jobs.area(d[0], d[1], d[2], d[3])).toList();
      List<Stock> stock =
          sheets.stream()
              .map(s -> Jobs.with(Jobs.stock(s[0], s[1], 0, Stock.UNLIMITED, s[2]), areas))
              .toList();
      return new LayoutJob(blanks, stock, Jobs.mm(kerf), Least.COST);
    }

    /** The least cost, trying every set of parts on every sheet. */
    long best() {
      int all = (1 << parts.size()) - 1;
      long[] least = new long[all + 1];
      Arrays.fill(least, 1, all + 1, NEVER);
      for (int[] sheet : sheets) {
        Map<Long, Boolean> known = new HashMap<>();
        for (int set = 1; set <= all; set++) {
          if (fits(set, new int[] {0, sheet[0] + kerf, 0, sheet[1] + kerf}, known)) {
            least[set] = Math.min(least[set], sheet[2]);
          }
        }
      }
      for (int set = 1; set <= all; set++) {
        for (int some = set - 1 & set; some > 0; some = some - 1 & set) {
          least[set] = Math.min(least[set], least[some] + least[set ^ some]);
        }
      }
      return least[all];
    }

    private boolean fits(int set, int[] at, Map<Long, Boolean> known) {
      long key = set;
      for (int each : at) {
        key = 32 * key + each;
      }
      Boolean before = known.get(key);
      if (before == null) {
        before = Integer.bitCount(set) == 1 ? fitsAlone(set, at) : fitsCut(set, at, known);
        known.put(key, before);
      }
      return before;
    }

    private boolean fitsAlone(int set, int[] at) {
      int part = Integer.numberOfTrailingZeros(set);
      int a = parts.get(part)[0] + kerf;
      int b = parts.get(part)[1] + kerf;
      return fitsAlone(a, b, at) || turns.get(part) && fitsAlone(b, a, at);
    }

    private boolean fitsAlone(int length, int width, int[] at) {
      for (int x = at[0]; x + length <= at[1]; x++) {
        for (int y = at[2]; y + width <= at[3]; y++) {
          int left = x;
          int bottom = y;
          if (defects.stream().noneMatch(d -> covers(left, bottom, length, width, d))) {
            return true;
          }
        }
      }
      return false;
    }

    private boolean covers(int x, int y, int length, int width, int[] d) {
      return x < d[0] + d[2]
          && d[0] < x + length - kerf
          && y < d[1] + d[3]
          && d[1] < y + width - kerf;
    }

    private boolean fitsCut(int set, int[] at, Map<Long, Boolean> known) {
      for (int some = set - 1 & set; some > 0; some = some - 1 & set) {
        for (int axis = 0; axis < 2; axis++) {
          for (int cut = at[2 * axis] + 1; cut < at[2 * axis + 1]; cut++) {
            int[] near = at.clone();
            int[] far = at.clone();
            near[2 * axis + 1] = cut;
            far[2 * axis] = cut;
            if (fits(some, near, known) && fits(set ^ some, far, known)) {
              return true;
            }
          }
        }
      }
      return false;
    }

    @Override
    public String toString() {
      return "kerf %d parts %s turns %s sheets %s defects %s"
          .formatted(kerf, text(parts), turns, text(sheets), text(defects));
    }

    private static String text(List<int[]> lists) {
      return lists.stream().map(Arrays::toString).toList().toString();
    }
  }
}
