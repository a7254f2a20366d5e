package storyrod.layout.length;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.layout.length.LengthJobs.job;
import static storyrod.layout.length.LengthJobs.knot;
import static storyrod.layout.length.LengthJobs.part;
import static storyrod.layout.length.LengthJobs.stock;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.layout.Budget;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutJob.Trim;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Missing;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.layout.LayoutReplay;
import storyrod.measure.Length;

class LengthsTest {
  private static final int ANY = Stock.UNLIMITED;

  @Test
  void randomJobsCanBeSawnAndAreNotBelowTheirBound() {
    for (int seed = 0; seed < 400; seed++) {
      LayoutJob job = new LengthJobs(seed).next(12, 6, 3);
      LayoutPlan plan = plan(job, 20_000);
      assertEquals(List.of(), LayoutReplay.faults(job, plan), "seed " + seed);
      assertTrue(!plan.missing().isEmpty() || plan.lowerBound() <= plan.value(), "seed " + seed);
    }
  }

  @Test
  void tinyJobsAreSolvedAsWellAsByTryingEverything() {
    int proved = 0;
    int solved = 0;
    for (int seed = 0; seed < 400; seed++) {
      LayoutJob job = new LengthJobs(seed).next(4, 2, 3);
      LayoutPlan plan = plan(job, 100_000);
      Measured measured = new Measured(job);
      long least = BruteForce.price(measured.bars());
      if (measured.tooLong().isEmpty() && least < Long.MAX_VALUE) {
        assertEquals(least, plan.value(), "seed " + seed);
        assertTrue(plan.lowerBound() <= BruteForce.price(measured.barsAtMost()), "seed " + seed);
        proved += plan.proved() ? 1 : 0;
        solved++;
      }
    }
    assertTrue(proved >= solved * 0.95, proved + " proved of " + solved);
  }

  /** The example of a paper machine often told: 5600 mm rolls, 73 are the least. From memory. */
  @Test
  void rollsOfPaperNeedSeventyThree() {
    int[] widths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
    int[] counts = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
    List<Blank> blanks =
        java.util.stream.IntStream.range(0, widths.length)
            .mapToObj(i -> part(widths[i], counts[i]))
            .toList();
    LayoutPlan plan = plan(job(0, Least.PIECES, List.of(stock(5600, ANY, 1)), blanks), 500_000);
    assertEquals(73, plan.value());
    assertTrue(plan.proved());
  }

  @Test
  void theKerfIsPaidBetweenPartsButNotAtTheEnds() {
    List<Blank> parts = List.of(part(499, 2));
    assertEquals(1, plan(job(2, Least.PIECES, List.of(stock(1000, ANY, 1)), parts), 0).value());
    assertEquals(2, plan(job(2.1, Least.PIECES, List.of(stock(1000, ANY, 1)), parts), 0).value());
  }

  @Test
  void theLastPartThatFillsItsPieceNeedsNoCut() {
    LayoutJob job = job(2, Least.PIECES, List.of(stock(1000, ANY, 1)), List.of(part(499, 2)));
    List<SawCut> cuts = plan(job, 0).pieces().getFirst().cuts();
    assertEquals(1, cuts.size());
    assertEquals(Length.mm(499), cuts.getFirst().fence());
  }

  @Test
  void partsLieBesideADefectAndNoKerfIsLostAtIt() {
    Stock knotted = stock(1010, ANY, 1, Trim.NONE, List.of(knot(500, 10)));
    LayoutJob job = job(3, Least.PIECES, List.of(knotted), List.of(part(500, 2)));
    LayoutPlan plan = plan(job, 0);
    assertEquals(List.of(), LayoutReplay.faults(job, plan));
    assertEquals(1, plan.value());
  }

  @Test
  void aRemnantIsUsedFirstIfItIsCheaper() {
    List<Stock> stock = List.of(stock(2000, ANY, 200), stock(900, 2, 60));
    LayoutPlan plan = plan(job(3, Least.COST, stock, List.of(part(900, 2))), 100_000);
    assertEquals(120, plan.value());
    assertTrue(plan.proved());
    List<Stock> dear = List.of(stock(2000, ANY, 200), stock(900, 2, 110));
    assertEquals(200, plan(job(3, Least.COST, dear, List.of(part(900, 2))), 100_000).value());
  }

  @Test
  void theRestIsKeptInOnePiece() {
    // Best fit alone leaves 400 and 300: 600 + 200 + 200 and 700 leave 300 but none more.
    List<Blank> parts = List.of(part(600, 1), part(500, 1), part(200, 2));
    LayoutJob job = job(0, Least.PIECES, List.of(stock(1000, ANY, 1)), parts);
    LayoutPlan plan = plan(job, 100_000);
    Length longest =
        plan.pieces().stream()
            .flatMap(piece -> piece.offcuts().stream())
            .map(LayoutJob.Area::length)
            .max(Length::compareTo)
            .orElseThrow();
    assertEquals(Length.mm(500), longest);
  }

  @Test
  void equalPiecesAndLengthsFollowEachOther() {
    List<Blank> parts = List.of(part(600, 3), part(400, 3), part(300, 6));
    LayoutJob job = job(0, Least.PIECES, List.of(stock(1000, ANY, 1)), parts);
    LayoutPlan plan = plan(job, 100_000);
    assertEquals(5, plan.value());
    List<Length> lengths =
        plan.pieces().stream()
            .flatMap(piece -> piece.spots().stream())
            .map(spot -> spot.area().length())
            .toList();
    long settings = 1;
    for (int i = 1; i < lengths.size(); i++) {
      settings += lengths.get(i).equals(lengths.get(i - 1)) ? 0 : 1;
    }
    assertTrue(settings <= 5, lengths::toString);
  }

  @Test
  void whatIsTooLongOrNoLongerThereIsTold() {
    List<Blank> parts = List.of(part(3000, 1), part(800, 4));
    LayoutJob job = job(3, Least.PIECES, List.of(stock(2000, 1, 1)), parts);
    LayoutPlan plan = plan(job, 100_000);
    assertEquals(List.of(new Missing(0, 1, false), new Missing(1, 2, true)), plan.missing());
    assertEquals(List.of(), LayoutReplay.faults(job, plan));
    assertFalse(plan.proved());
  }

  @Test
  void moreStepsAreNeverWorseAndEqualOnesAreEqual() {
    for (int seed = 0; seed < 10; seed++) {
      LayoutJob job = new LengthJobs(seed).next(30, 3, 2);
      long before = Long.MAX_VALUE;
      for (long steps : new long[] {0, 1000, 10_000, 100_000}) {
        LayoutPlan plan = plan(job, steps);
        assertEquals(plan, plan(job, steps));
        assertTrue(plan.value() <= before, "seed " + seed);
        before = plan.value();
      }
    }
  }

  @Test
  void aStopEndsTheSearchWithALayout() {
    LayoutJob job = new LengthJobs(5).next(200, 3, 1);
    LayoutPlan plan = Lengths.plan(job, new Budget(Long.MAX_VALUE, 1, () -> true));
    assertEquals(List.of(), LayoutReplay.faults(job, plan));
  }

  @Test
  void tenThousandPartsAreLaidOut() {
    List<Blank> parts =
        java.util.stream.IntStream.range(0, 1000).mapToObj(i -> part(300 + i, 10)).toList();
    LayoutJob job = job(3, Least.PIECES, List.of(stock(3000, ANY, 1)), parts);
    LayoutPlan plan = plan(job, 100_000);
    assertEquals(List.of(), LayoutReplay.faults(job, plan));
    assertTrue(plan.value() <= plan.lowerBound() * 1.02, plan.value() + " " + plan.lowerBound());
  }

  @Test
  void aJobIsOneOfLengthsIfAllIsEquallyWide() {
    List<Stock> stock = List.of(stock(1000, ANY, 1, Trim.all(Length.mm(5)), List.of()));
    assertTrue(Lengths.fits(job(3, Least.PIECES, stock, List.of(part(500, 1)))));
    List<Blank> other = List.of(new Blank("wide", Length.mm(500), Length.mm(90), 1, false));
    assertFalse(Lengths.fits(job(3, Least.PIECES, stock, other)));
    List<Blank> turning = List.of(new Blank("any", Length.mm(500), Length.mm(100), 1, true));
    assertTrue(Lengths.fits(job(3, Least.PIECES, stock, turning)));
    List<Stock> knotted = List.of(stock(1000, ANY, 1, Trim.NONE, List.of(knot(1, 1))));
    assertFalse(Lengths.fits(job(3, Least.PIECES, knotted, turning)));
  }

  private static LayoutPlan plan(LayoutJob job, long steps) {
    assertTrue(Lengths.fits(job));
    return Lengths.plan(job, Budget.ofSteps(steps));
  }
}
