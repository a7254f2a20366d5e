package storyrod.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.stock.StockPlan.BoardNeed;
import storyrod.stock.StockPlan.HardwareNeed;
import storyrod.stock.StockPlan.RoughPart;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** A shop with a kerf of 1/8, an edge trim of 1/4, 1 more length, 1/4 more width, 20 % waste. */
class StockPlannerTest {
  private static final Rational EIGHT = Rational.of(8, 1);

  private static Pieces oak() {
    return new Pieces().boards("oak", Optional.of(Length.inches(1)), EIGHT);
  }

  private static Pieces ply() {
    return new Pieces().sheets("ply", true, 90);
  }

  @Test
  void solidPartsGetAllowancesAndTheBoughtThickness() {
    StockPlan plan = plan(oak().parts("A", 2, "oak", "30 in", "9 1/4 in"));
    assertEquals(
        List.of(new RoughPart("A", 2, inches("31"), inches("9 1/2"), inches("1"))), plan.rough());
  }

  @Test
  void boardsWithoutARoughThicknessAreSawnFromTheFinishedOne() {
    Pieces pieces = new Pieces().boards("oak", Optional.empty(), EIGHT);
    StockPlan plan = plan(pieces.parts("A", 1, "oak", "30 in", "4 in"));
    assertEquals(inches("3/4"), plan.rough().getFirst().thickness());
  }

  @Test
  void longerPartsGetMoreWidthForTheirCrook() {
    // 1/4 up to 48 in, 3/8 up to 96, 1/2 beyond.
    Map.of("48 in", "4 1/4", "48 1/2 in", "4 3/8", "96 in", "4 3/8", "97 in", "4 1/2")
        .forEach(
            (length, rough) ->
                assertEquals(
                    inches(rough),
                    plan(oak().parts("A", 1, "oak", length, "4 in")).rough().getFirst().width(),
                    length));
  }

  @Test
  void sheetPartsGetNothingExtra() {
    StockPlan plan = plan(ply().parts("A", 1, "ply", "40 in", "22 in"));
    assertEquals(
        List.of(new RoughPart("A", 1, inches("40"), inches("22"), inches("3/4"))), plan.rough());
  }

  @Test
  void boardFeetWasteAndCostAreAsWorkedByHand() {
    // 2 x 31 x 9 1/2 / 144 = 589/144, 21 x 2 1/4 / 144 = 21/64, together 2545/576 = 4.418;
    // with 20 % 5.302, so 5.4 to buy at 8 each.
    StockPlan plan =
        plan(oak().parts("A", 2, "oak", "30 in", "9 1/4 in").parts("B", 1, "oak", "20 in", "2 in"));
    BoardNeed need = plan.boards().getFirst();
    assertEquals("oak", need.stock().name());
    assertEquals(Rational.of(2545, 576), need.net());
    assertEquals(Rational.of(54, 10), need.toBuy());
    assertEquals(20, need.wastePercent());
    assertEquals(Optional.of(Rational.of(432, 10)), need.cost());
  }

  @Test
  void stockThatNoPartUsesIsNotBought() {
    StockPlan plan = plan(oak().sheets("ply", true, 90).parts("A", 1, "ply", "40 in", "22 in"));
    assertEquals(List.of(), plan.boards());
    assertEquals(1, plan.layouts().size());
  }

  @Test
  void theCutsOfOnePartAreAsWorkedByHand() {
    // The edges first, each near edge with the fence on the far one; then across at 1/4 + 40, which
    // leaves 95 1/2 - 40 - 1/8 = 55 3/8 by 47 1/2; then along at 1/4 + 22.
    StockPlan plan = plan(ply().parts("A", 1, "ply", "40 in", "22 in"));
    SheetLayout sheet = onlySheet(plan);
    assertEquals(
        List.of(
            cut(1, true, "1/8", "0", "96", "47 3/4"),
            cut(2, true, "47 3/4", "0", "96", "47 1/2"),
            cut(3, false, "1/8", "1/4", "47 3/4", "95 3/4"),
            cut(4, false, "95 3/4", "1/4", "47 3/4", "95 1/2"),
            cut(5, false, "40 1/4", "1/4", "47 3/4", "40"),
            cut(6, true, "22 1/4", "1/4", "40 1/4", "22")),
        sheet.cuts());
    assertEquals(area("1/4", "1/4", "40", "22"), sheet.placed().getFirst().area());
    assertEquals(
        List.of(area("40 3/8", "1/4", "55 3/8", "47 1/2"), area("1/4", "22 3/8", "40", "25 3/8")),
        sheet.offcuts());
  }

  @Test
  void sheetsAreCountedPricedAndProved() {
    // Two side by side are 44 1/8 wide and two behind each other 80 1/8 long: four on a sheet.
    StockPlan plan = plan(ply().parts("A", 5, "ply", "40 in", "22 in"));
    SheetPlan layout = plan.layouts().getFirst();
    assertEquals(2, layout.sheets().size());
    assertEquals(2, layout.lowerBound());
    assertEquals(Optional.of(Rational.of(180, 1)), layout.cost());
  }

  @Test
  void grainKeepsPartsFromTurning() {
    Pieces grained = new Pieces().sheets("ply", true, 90).parts("A", 2, "ply", "47 in", "46 in");
    assertEquals(1, plan(grained).layouts().getFirst().sheets().size());
    Pieces narrow = new Pieces().sheets("ply", false, 90).parts("A", 1, "ply", "40 in", "60 in");
    assertTrue(onlySheet(plan(narrow)).placed().getFirst().turned());
  }

  @Test
  void aPartLargerThanTheSheetIsAnErrorThatSaysWhatFits() {
    Diagnostics diagnostics = new Diagnostics();
    Pieces pieces = new Pieces().sheets("ply", true, 90).parts("A", 1, "ply", "40 in", "60 in");
    assertEquals(Optional.empty(), StockPlanner.plan(pieces.piece(), diagnostics));
    Diagnostic error = diagnostics.sorted().getFirst();
    assertEquals("part-larger-than-sheet", error.code());
    assertTrue(error.isError());
    assertEquals(
        "part-A1 is 40 x 60 in, but a sheet of ply gives at most 95 1/2 x 47 1/2 in",
        error.message());
    assertTrue(error.hints().getLast().startsWith("turned it would fit"));
  }

  @Test
  void aPartThatIsTooLargeEitherWayIsNotToldToTurn() {
    Diagnostics diagnostics = new Diagnostics();
    Pieces pieces = new Pieces().sheets("ply", false, 90).parts("A", 1, "ply", "97 in", "50 in");
    assertEquals(Optional.empty(), StockPlanner.plan(pieces.piece(), diagnostics));
    assertEquals(1, diagnostics.sorted().getFirst().hints().size());
  }

  @Test
  void hardwareOfJointsAndMountedHardwareIsAddedUpInTheOrderOfTheItems() {
    Pieces pieces =
        oak()
            .parts("A", 2, "oak", "30 in", "9 1/4 in")
            .item("slide", 1, Optional.of(Rational.of(24, 1)))
            .item("unused", 10, Optional.empty())
            .item("screw", 10, Optional.of(Rational.of(49, 10)))
            .item("pin", 20, Optional.empty())
            .joint("screw", 4)
            .joint("screw", 3)
            .hardware("pin", 8, Optional.empty(), 0)
            .hardware("slide", 2, Optional.of("screw"), 7);
    assertEquals(
        List.of(
            need("slide", 2, 2, 1, Optional.of(Rational.of(48, 1))),
            need("screw", 21, 3, 10, Optional.of(Rational.of(147, 10))),
            need("pin", 8, 1, 20, Optional.empty())),
        plan(pieces).hardware());
  }

  private static HardwareNeed need(
      String item, int count, int packs, int packSize, Optional<Rational> cost) {
    return new HardwareNeed(item, "Title of " + item, count, packs, packSize, cost);
  }

  private static StockPlan plan(Pieces pieces) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<StockPlan> plan = StockPlanner.plan(pieces.piece(), diagnostics);
    assertFalse(diagnostics.hasErrors(), () -> diagnostics.sorted().toString());
    return plan.orElseThrow();
  }

  private static SheetLayout onlySheet(StockPlan plan) {
    List<SheetLayout> sheets = plan.layouts().getFirst().sheets();
    assertEquals(1, sheets.size());
    return sheets.getFirst();
  }

  private static SawCut cut(
      int number, boolean alongLength, String at, String from, String to, String fence) {
    return new SawCut(number, alongLength, inches(at), inches(from), inches(to), inches(fence));
  }

  private static Area area(String x, String y, String length, String width) {
    return new Area(inches(x), inches(y), inches(length), inches(width));
  }

  private static Length inches(String number) {
    return Length.parse(number + " in");
  }
}
