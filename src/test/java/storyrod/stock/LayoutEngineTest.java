package storyrod.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.stock.Layouts.part;
import static storyrod.stock.Layouts.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.stock.SheetProblem.Rectangle;
import storyrod.stock.SheetProblem.Sheet;
import storyrod.stock.StockPlan.SheetLayout;

class LayoutEngineTest {
  private static final Effort SHORT = new Effort(100, 30, 1);

  @Test
  void everyLayoutOfRandomPartsCanBeSawnAndUsesNoLessThanTheBound() {
    Random random = new Random(42);
    for (int job = 0; job < 120; job++) {
      SheetProblem problem = randomProblem(random);
      LayoutEngine.Result result = LayoutEngine.solve(problem, SHORT);
      assertEquals(List.of(), Layouts.faults(problem, result), "job " + job);
      assertTrue(result.lowerBound() <= result.sheets().size(), "job " + job);
    }
  }

  private static SheetProblem randomProblem(Random random) {
    double kerf = random.nextInt(13) / 2.0;
    double trim = random.nextBoolean() ? 0 : kerf + random.nextInt(3) * 2.5;
    int turnable = random.nextInt(3);
    List<Rectangle> parts = new ArrayList<>();
    int count = 1 + random.nextInt(25);
    while (parts.size() < count) {
      double length = 40 + random.nextInt(900) * 0.5;
      double width = 30 + random.nextInt(600) * 0.5;
      boolean mayTurn = turnable == 1 || turnable == 2 && random.nextBoolean();
      int equal = 1 + random.nextInt(4);
      parts.addAll(Collections.nCopies(equal, part(length, width, mayTurn)));
    }
    return new SheetProblem(sheet(1000, 700, kerf, trim), parts);
  }

  @Test
  void fourPartsThatFillTheSheetWithTheirKerfsTakeOneSheet() {
    // 2 x 498.5 + 3 = 1000 and 2 x 248.5 + 3 = 500.
    Sheet sheet = sheet(1000, 500, 3, 0);
    Rectangle quarter = part(498.5, 248.5, false);
    assertEquals(1, sheets(sheet, Collections.nCopies(4, quarter)));
  }

  @Test
  void kerfThatDoesNotFitTakesASecondSheet() {
    Sheet sheet = sheet(1000, 500, 3, 0);
    assertEquals(2, sheets(sheet, Collections.nCopies(2, part(499, 500, false))));
  }

  @Test
  void trimIsTakenOffBothEdges() {
    Rectangle part = part(980, 480, false);
    assertEquals(1, sheets(sheet(1000, 500, 3, 10), List.of(part)));
    Sheet wider = sheet(1000, 500, 3, 11);
    assertThrows(IllegalArgumentException.class, () -> sheets(wider, List.of(part)));
  }

  @Test
  void grainForbidsTurning() {
    Sheet sheet = sheet(1000, 500, 0, 0);
    assertEquals(1, sheets(sheet, List.of(part(500, 500, false), part(300, 500, true))));
    assertEquals(1, sheets(sheet, List.of(part(700, 500, false), part(500, 300, true))));
    List<Rectangle> grained = List.of(part(700, 500, false), part(500, 300, false));
    assertEquals(2, sheets(sheet, grained));
  }

  @Test
  void amongEqualSheetCountsTheOffcutIsAsLargeAsCanBe() {
    // Cut across first the offcut is 600 x 500; cut along first it would be 1000 x 200.
    SheetProblem problem = new SheetProblem(sheet(1000, 500, 0, 0), List.of(part(400, 300, false)));
    List<SheetLayout> sawn = Layouts.sawn(problem, LayoutEngine.solve(problem, SHORT));
    StockPlan.Area offcut = sawn.getFirst().offcuts().getFirst();
    assertEquals("600 mm x 500 mm", offcut.length() + " x " + offcut.width());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 7})
  void equalInputGivesEqualCuts(long seed) {
    SheetProblem problem = randomProblem(new Random(seed));
    List<SheetLayout> once = Layouts.sawn(problem, LayoutEngine.solve(problem, SHORT));
    assertEquals(once, Layouts.sawn(problem, LayoutEngine.solve(problem, SHORT)));
  }

  private static int sheets(Sheet sheet, List<Rectangle> parts) {
    SheetProblem problem = new SheetProblem(sheet, parts);
    LayoutEngine.Result result = LayoutEngine.solve(problem, SHORT);
    assertEquals(List.of(), Layouts.faults(problem, result));
    return result.sheets().size();
  }
}
