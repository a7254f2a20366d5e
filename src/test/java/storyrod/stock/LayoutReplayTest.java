package storyrod.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.measure.Length;
import storyrod.stock.LayoutReplay.Wanted;
import storyrod.stock.StockPlan.Area;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SawCut;
import storyrod.stock.StockPlan.SheetLayout;

/** A sheet of 100 x 50 mm, ripped at 30 and the strip crosscut at 40, with a kerf of 2. */
class LayoutReplayTest {
  private static final Length KERF = Length.mm(2);
  private static final SawCut RIP = cut(1, true, 30, 0, 100, 30);
  private static final SawCut CROSSCUT = cut(2, false, 40, 0, 30, 40);
  private static final Placed LEFT = placed("left", 0, 0, 40, 30);
  private static final Placed RIGHT = placed("right", 42, 0, 58, 30);
  private static final List<Wanted> WANTED =
      List.of(wanted("left", 40, 30, false), wanted("right", 58, 30, false));

  @Test
  void rightCutsHaveNoFaults() {
    assertEquals(List.of(), faults(List.of(RIP, CROSSCUT), List.of(LEFT, RIGHT)));
  }

  @Test
  void aCutThatStopsInsideIsFound() {
    SawCut stopped = cut(2, false, 40, 0, 20, 40);
    assertFound("goes right across no piece", List.of(RIP, stopped), List.of(LEFT, RIGHT));
  }

  @Test
  void aCutThatBeginsOutsideTheSheetIsFound() {
    SawCut outside = cut(1, true, -1, 0, 100, 49);
    SawCut rip = cut(2, true, 31, 1, 100, 30);
    assertFound("begins outside the sheet", List.of(outside, rip), List.of(LEFT, RIGHT));
  }

  @Test
  void aLastCutMayRunOffTheFarEdgeOfItsPiece() {
    SawCut close = cut(2, false, 99, 0, 30, 99);
    Placed left = placed("left", 0, 0, 99, 30);
    assertEquals(
        List.of(),
        LayoutReplay.faults(
            List.of(sheet(List.of(RIP, close), List.of(left))),
            KERF,
            List.of(wanted("left", 99, 30, false))));
  }

  @Test
  void aKerfThatWasNotPaidIsFound() {
    Placed greedy = placed("right", 40, 0, 60, 30);
    assertFound("right is not sawn", List.of(RIP, CROSSCUT), List.of(LEFT, greedy));
  }

  @Test
  void aWrongFenceIsFound() {
    SawCut wrong = cut(2, false, 40, 0, 30, 41);
    assertFound("another fence", List.of(RIP, wrong), List.of(LEFT, RIGHT));
  }

  @Test
  void aMissingPartIsFound() {
    assertFound("right is missing", List.of(RIP, CROSSCUT), List.of(LEFT));
  }

  @Test
  void aPartThatIsThereTwiceIsFound() {
    Placed again = placed("left", 42, 0, 58, 30);
    assertFound("left is there twice", List.of(RIP, CROSSCUT), List.of(LEFT, again));
  }

  @Test
  void twoPartsOfOnePieceAreFound() {
    Placed same = placed("right", 0, 0, 40, 30);
    assertFound("right is not sawn", List.of(RIP, CROSSCUT), List.of(LEFT, same));
  }

  @Test
  void aPartAcrossTheGrainIsFound() {
    Placed turned = new Placed("B", "right", RIGHT.area(), true);
    List<Wanted> wanted = List.of(WANTED.getFirst(), wanted("right", 30, 58, false));
    List<String> faults =
        LayoutReplay.faults(
            List.of(sheet(List.of(RIP, CROSSCUT), List.of(LEFT, turned))), KERF, wanted);
    assertEquals(List.of("right lies across the grain"), faults);
  }

  @Test
  void aCutOutOfOrderIsFound() {
    assertFound("out of order", List.of(CROSSCUT, RIP), List.of(LEFT, RIGHT));
  }

  @Test
  void anOffcutThatIsNoPieceIsFound() {
    SheetLayout sheet =
        new SheetLayout(
            Length.mm(100),
            Length.mm(50),
            List.of(LEFT, RIGHT),
            List.of(RIP, CROSSCUT),
            List.of(area(0, 30, 100, 20)));
    List<String> faults = LayoutReplay.faults(List.of(sheet), KERF, WANTED);
    assertTrue(faults.toString().contains("is no offcut"), faults::toString);
  }

  private static void assertFound(String fault, List<SawCut> cuts, List<Placed> placed) {
    List<String> faults = faults(cuts, placed);
    assertTrue(faults.stream().anyMatch(each -> each.contains(fault)), faults::toString);
  }

  private static List<String> faults(List<SawCut> cuts, List<Placed> placed) {
    return LayoutReplay.faults(List.of(sheet(cuts, placed)), KERF, WANTED);
  }

  private static SheetLayout sheet(List<SawCut> cuts, List<Placed> placed) {
    return new SheetLayout(
        Length.mm(100), Length.mm(50), placed, cuts, List.of(area(0, 32, 100, 18)));
  }

  private static SawCut cut(
      int number, boolean alongLength, long at, long from, long to, long fence) {
    return new SawCut(
        number, alongLength, Length.mm(at), Length.mm(from), Length.mm(to), Length.mm(fence));
  }

  private static Placed placed(String part, long x, long y, long length, long width) {
    return new Placed("A", part, area(x, y, length, width), false);
  }

  private static Area area(long x, long y, long length, long width) {
    return new Area(Length.mm(x), Length.mm(y), Length.mm(length), Length.mm(width));
  }

  private static Wanted wanted(String part, long length, long width, boolean mayTurn) {
    return new Wanted(part, Length.mm(length), Length.mm(width), mayTurn);
  }
}
