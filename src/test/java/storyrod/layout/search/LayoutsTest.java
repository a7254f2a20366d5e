package storyrod.layout.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.layout.Jobs.job;
import static storyrod.layout.Jobs.part;
import static storyrod.layout.Jobs.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.layout.Budget;
import storyrod.layout.Jobs;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Missing;
import storyrod.layout.LayoutReplay;

class LayoutsTest {
  private static final Budget SHORT = Budget.ofSteps(3_000);

  @Test
  void everyLayoutOfRandomPartsCanBeSawnAndTakesNoLessThanTheBound() {
    Random random = new Random(42);
    for (int i = 0; i < 100; i++) {
      LayoutJob job = randomJob(random);
      LayoutPlan plan = Layouts.plan(job, SHORT);
      assertEquals(List.of(), LayoutReplay.faults(job, plan), "job " + i);
      boolean complete = plan.missing().isEmpty();
      assertTrue(!complete || plan.lowerBound() <= plan.value(), "job " + i);
    }
  }

  private static LayoutJob randomJob(Random random) {
    double kerf = random.nextInt(13) / 2.0;
    double trim = random.nextBoolean() ? 0 : random.nextInt(5) * 2.5;
    int turnable = random.nextInt(3);
    List<Blank> parts = new ArrayList<>();
    int count = 1 + random.nextInt(25);
    while (parts.size() < count) {
      double length = 40 + random.nextInt(900) * 0.5;
      double width = 30 + random.nextInt(600) * 0.5;
      boolean mayTurn = turnable == 1 || turnable == 2 && random.nextBoolean();
      parts.add(part(length, width, 1 + random.nextInt(4), mayTurn));
    }
    List<Stock> stock = new ArrayList<>();
    for (int i = random.nextInt(3); i >= 0; i--) {
      stock.add(randomStock(random, trim));
    }
    Least least = random.nextBoolean() ? Least.PIECES : Least.COST;
    return new LayoutJob(parts, stock, Jobs.mm(kerf), least);
  }

  private static Stock randomStock(Random random, double trim) {
    double length = 300 + random.nextInt(900);
    double width = 200 + random.nextInt(700);
    int available = random.nextInt(3) == 0 ? 1 + random.nextInt(9) : Stock.UNLIMITED;
    Stock stock = Jobs.stock(length, width, trim, available, 1 + random.nextInt(1000));
    List<Area> defects = new ArrayList<>();
    for (int i = random.nextInt(8) - 4; i > 0; i--) {
      double x = random.nextInt((int) length) - 5;
      double y = random.nextInt((int) width) - 5;
      defects.add(Jobs.area(x, y, 1 + random.nextInt(60), 0.5 + random.nextInt(40)));
    }
    return Jobs.with(stock, defects);
  }

  @Test
  void fourPartsThatFillTheSheetWithTheirKerfsTakeOneSheet() {
    // 2 x 498.5 + 3 = 1000 and 2 x 248.5 + 3 = 500.
    Blank quarter = part(498.5, 248.5, false);
    assertEquals(1, pieces(3, sheet(1000, 500, 0), Collections.nCopies(4, quarter)));
  }

  @Test
  void kerfThatDoesNotFitTakesASecondSheet() {
    List<Blank> halves = Collections.nCopies(2, part(499, 500, false));
    assertEquals(2, pieces(3, sheet(1000, 500, 0), halves));
  }

  @Test
  void trimIsTakenOffBothEdges() {
    List<Blank> parts = List.of(part(980, 480, false));
    assertEquals(1, pieces(3, sheet(1000, 500, 10), parts));
    LayoutPlan plan = Layouts.plan(job(3, sheet(1000, 500, 11), parts), SHORT);
    assertEquals(List.of(new Missing(0, 1, false)), plan.missing());
    assertEquals(0, plan.value());
  }

  @Test
  void stockThatRunsOutLeavesPartsMissing() {
    Stock two = Jobs.stock(1000, 500, 0, 2, 1);
    LayoutPlan plan = Layouts.plan(job(3, two, List.of(part(900, 400, 5, false))), SHORT);
    assertEquals(List.of(new Missing(0, 3, true)), plan.missing());
    assertEquals(2, plan.pieces().size());
    assertEquals(5, plan.lowerBound(), "each part needs a sheet of its own");
    assertFalse(plan.proved());
  }

  @Test
  void howMuchIsNeededIsToldWhereTheStockIsTooSmall() {
    Random random = new Random(77);
    int lacking = 0;
    for (int i = 0; i < 200; i++) {
      LayoutJob job = randomJob(random);
      LayoutPlan plan = Layouts.plan(job, SHORT);
      if (plan.missing().stream().anyMatch(Missing::fits)) {
        LayoutPlan more = Layouts.plan(job.withoutLimits(), SHORT);
        boolean enough = more.missing().stream().noneMatch(Missing::fits);
        lacking++;
        assertTrue(plan.lowerBound() > 0, "job " + i);
        assertTrue(
            !enough || plan.lowerBound() <= more.value(),
            "job " + i + ": " + plan.lowerBound() + " and " + more.value());
      }
    }
    assertTrue(lacking > 3, lacking + " jobs were short of stock");
  }

  @Test
  void nothingToSawTakesNothing() {
    LayoutPlan plan = Layouts.plan(job(3, sheet(1000, 500, 0), List.of()), SHORT);
    assertEquals(new LayoutPlan(List.of(), 0, 0), plan);
  }

  @Test
  void grainForbidsTurning() {
    Stock sheet = sheet(1000, 500, 0);
    assertEquals(1, pieces(0, sheet, List.of(part(500, 500, false), part(300, 500, true))));
    assertEquals(1, pieces(0, sheet, List.of(part(700, 500, false), part(500, 300, true))));
    assertEquals(2, pieces(0, sheet, List.of(part(700, 500, false), part(500, 300, false))));
  }

  @Test
  void partsLieBesideADefectAndNotOverIt() {
    // Left of the knot 300 are clear, right of it 650, and the blade may run through it.
    List<Area> knot = List.of(Jobs.area(303, 100, 47, 20));
    Stock board = Jobs.with(Jobs.stock(1000, 150, 0, 1, 1), knot);
    List<Blank> parts = List.of(part(303, 150, false), part(650, 150, false));
    assertEquals(1, pieces(3, board, parts));
    LayoutPlan longer = Layouts.plan(job(3, board, List.of(part(651, 150, false))), SHORT);
    assertEquals(1, longer.missing().size());
    LayoutPlan beside = Layouts.plan(job(3, board, List.of(part(1000, 100, false))), SHORT);
    assertEquals(List.of(), beside.missing());
  }

  @Test
  void theCheaperStockIsTakenWhereCostCounts() {
    Stock sheet = Jobs.stock(1000, 500, 0, Stock.UNLIMITED, 100);
    Stock remnant = Jobs.stock(400, 400, 0, 2, 30);
    List<Blank> parts = List.of(part(400, 200, 4, false));
    List<Stock> both = List.of(sheet, remnant);
    LayoutPlan cost = Layouts.plan(new LayoutJob(parts, both, Jobs.mm(0), Least.COST), SHORT);
    assertEquals(60, cost.value());
    assertTrue(cost.proved());
    LayoutPlan pieces = Layouts.plan(new LayoutJob(parts, both, Jobs.mm(0), Least.PIECES), SHORT);
    assertEquals(1, pieces.value());
  }

  @Test
  void amongEqualSheetCountsTheOffcutIsAsLargeAsCanBe() {
    // Cut across first the offcut is 600 x 500; cut along first it would be 1000 x 200.
    LayoutJob job = job(0, sheet(1000, 500, 0), List.of(part(400, 300, false)));
    Area offcut = Layouts.plan(job, SHORT).pieces().getFirst().offcuts().getFirst();
    assertEquals("600 mm x 500 mm", offcut.length() + " x " + offcut.width());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 7})
  void equalInputGivesEqualCuts(long seed) {
    LayoutJob job = randomJob(new Random(seed));
    assertEquals(Layouts.plan(job, SHORT), Layouts.plan(job, SHORT));
  }

  private static int pieces(double kerf, Stock stock, List<Blank> blanks) {
    LayoutPlan plan = Layouts.plan(job(kerf, stock, blanks), SHORT);
    assertEquals(List.of(), plan.missing());
    return plan.pieces().size();
  }

  @Test
  void moreStepsNeverGiveAWorseLayout() {
    Random random = new Random(8);
    for (int i = 0; i < 8; i++) {
      LayoutJob job = randomJob(random);
      long before = Long.MAX_VALUE;
      for (long steps = 0; steps <= 5_000; steps = 10 * steps + 40) {
        LayoutPlan plan = Layouts.plan(job, Budget.ofSteps(steps));
        long value = plan.missing().isEmpty() ? plan.value() : Long.MAX_VALUE;
        assertTrue(value <= before, "job " + i + " with " + steps);
        before = value;
      }
    }
  }

  @Test
  void aStopGivesTheBestSoFar() {
    LayoutJob job = randomJob(new Random(9));
    LayoutPlan plan = Layouts.plan(job, new Budget(Long.MAX_VALUE, 1, () -> true));
    assertEquals(List.of(), LayoutReplay.faults(job, plan));
  }

  @Test
  void manyEqualPartsAreLaidOutBySheetsThatRepeat() {
    // Two patterns without waste, 100 times each: four quarters, or a half and three sixths.
    List<Blank> parts =
        List.of(
            part(500, 250, 400, false), part(1000, 251, 100, false), part(331, 246, 300, false));
    LayoutPlan plan = Layouts.plan(job(3, sheet(1003, 503, 0), parts), Budget.ofSteps(200_000));
    assertEquals(200, plan.value());
  }
}
