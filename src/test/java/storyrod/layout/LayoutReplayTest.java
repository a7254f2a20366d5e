package storyrod.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.layout.Jobs.area;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutJob.Trim;
import storyrod.layout.LayoutPlan.Missing;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.measure.Length;

/** A sheet of 100 x 50 mm, ripped at 30 and the strip crosscut at 40, with a kerf of 2. */
class LayoutReplayTest {
  private static final SawCut RIP = cut(1, true, 30, 0, 100, 30);
  private static final SawCut CROSSCUT = cut(2, false, 40, 0, 30, 40);
  private static final Spot LEFT = new Spot(0, area(0, 0, 40, 30), false);
  private static final Spot RIGHT = new Spot(1, area(42, 0, 58, 30), false);
  private static final Area OFFCUT = area(0, 32, 100, 18);
  private static final Stock SHEET = Jobs.stock(100, 50, 0, 1, 7);
  private static final List<Blank> BLANKS = List.of(blank("left", 40, 30), blank("right", 58, 30));

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
  void aFenceBehindTheEdgeIsFound() {
    SawCut outside = cut(1, true, -1, 0, 100, -1);
    SawCut rip = cut(2, true, 31, 1, 100, 30);
    assertFound("another fence", List.of(outside, rip), List.of(LEFT, RIGHT));
  }

  @Test
  void aTrimNarrowerThanTheBladeBeginsOutside() {
    Trim trim = new Trim(Length.ZERO, Length.ZERO, Jobs.mm(1), Length.ZERO);
    Stock stock = new Stock("s", Jobs.mm(100), Jobs.mm(50), 1, 1, trim, List.of());
    LayoutJob job = job(List.of(blank("all", 100, 49)), stock, Least.PIECES);
    Spot all = new Spot(0, area(0, 1, 100, 49), false);
    Sawn sawn = new Sawn(0, List.of(all), List.of(cut(1, true, -1, 0, 100, 49)), List.of());
    assertEquals(List.of(), LayoutReplay.faults(job, new LayoutPlan(List.of(sawn), 1, 1)));
  }

  @Test
  void aLastCutMayRunOffTheFarEdgeOfItsPiece() {
    SawCut close = cut(2, false, 99, 0, 30, 99);
    Spot left = new Spot(0, area(0, 0, 99, 30), false);
    LayoutJob job = job(List.of(blank("left", 99, 30)), SHEET, Least.PIECES);
    Sawn sawn = new Sawn(0, List.of(left), List.of(RIP, close), List.of(OFFCUT));
    assertEquals(List.of(), LayoutReplay.faults(job, new LayoutPlan(List.of(sawn), 1, 1)));
  }

  @Test
  void aKerfThatWasNotPaidIsFound() {
    Spot greedy = new Spot(1, area(40, 0, 60, 30), false);
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
  void aPartToldMissingMayBeMissingAndNoOther() {
    LayoutPlan told = plan(List.of(RIP, CROSSCUT), List.of(LEFT), List.of(new Missing(1, 1, true)));
    assertEquals(List.of(), LayoutReplay.faults(job(), told));
    LayoutPlan wrong =
        plan(List.of(RIP, CROSSCUT), List.of(LEFT, RIGHT), List.of(new Missing(1, 1, true)));
    assertEquals(List.of("right is told missing and is not"), LayoutReplay.faults(job(), wrong));
  }

  @Test
  void aPartThatIsThereTwiceIsFound() {
    Spot again = new Spot(0, area(42, 0, 58, 30), false);
    assertFound("left is there too often", List.of(RIP, CROSSCUT), List.of(LEFT, again));
  }

  @Test
  void twoPartsOfOnePieceAreFound() {
    Spot same = new Spot(1, area(0, 0, 40, 30), false);
    assertFound("right is not sawn", List.of(RIP, CROSSCUT), List.of(LEFT, same));
  }

  @Test
  void aPartAcrossTheGrainIsFound() {
    Spot turned = new Spot(1, RIGHT.area(), true);
    List<Blank> blanks = List.of(BLANKS.getFirst(), blank("right", 30, 58));
    List<String> faults =
        LayoutReplay.faults(
            job(blanks, SHEET, Least.PIECES),
            plan(List.of(RIP, CROSSCUT), List.of(LEFT, turned), List.of()));
    assertEquals(List.of("right lies across the grain"), faults);
  }

  @Test
  void aPartOverADefectIsFoundAndOneBesideItIsRight() {
    LayoutPlan plan = plan(List.of(RIP, CROSSCUT), List.of(LEFT, RIGHT), List.of());
    Stock under = Jobs.with(SHEET, List.of(area(99, 29, 5, 5)));
    assertEquals(
        List.of("right lies over a defect"),
        LayoutReplay.faults(job(BLANKS, under, Least.PIECES), plan));
    Stock beside = Jobs.with(SHEET, List.of(area(99, 30, 5, 5), area(40, 0, 2, 50)));
    assertEquals(List.of(), LayoutReplay.faults(job(BLANKS, beside, Least.PIECES), plan));
  }

  @Test
  void moreStockThanThereIsIsFound() {
    Sawn sawn = sawn(List.of(RIP, CROSSCUT), List.of(LEFT, RIGHT));
    List<Blank> blanks =
        BLANKS.stream()
            .map(each -> new Blank(each.name(), each.length(), each.width(), 2, false))
            .toList();
    LayoutPlan plan = new LayoutPlan(List.of(sawn, sawn), 2, 2);
    List<String> faults = LayoutReplay.faults(job(blanks, SHEET, Least.PIECES), plan);
    assertEquals(List.of("there is less of sheet"), faults);
  }

  @Test
  void aWrongValueIsFound() {
    LayoutPlan plan = plan(List.of(RIP, CROSSCUT), List.of(LEFT, RIGHT), List.of());
    assertEquals(
        List.of("the layouts take 7 and not 1"),
        LayoutReplay.faults(job(BLANKS, SHEET, Least.COST), plan));
  }

  @Test
  void aCutOutOfOrderIsFound() {
    assertFound("out of order", List.of(CROSSCUT, RIP), List.of(LEFT, RIGHT));
  }

  @Test
  void anOffcutThatIsNoPieceIsFound() {
    Sawn sawn =
        new Sawn(0, List.of(LEFT, RIGHT), List.of(RIP, CROSSCUT), List.of(area(0, 30, 100, 20)));
    List<String> faults = LayoutReplay.faults(job(), new LayoutPlan(List.of(sawn), 1, 1));
    assertTrue(faults.toString().contains("is no offcut"), faults::toString);
  }

  private static void assertFound(String fault, List<SawCut> cuts, List<Spot> spots) {
    List<String> faults = faults(cuts, spots);
    assertTrue(faults.stream().anyMatch(each -> each.contains(fault)), faults::toString);
  }

  private static List<String> faults(List<SawCut> cuts, List<Spot> spots) {
    return LayoutReplay.faults(job(), plan(cuts, spots, List.of()));
  }

  private static LayoutPlan plan(List<SawCut> cuts, List<Spot> spots, List<Missing> missing) {
    return new LayoutPlan(List.of(sawn(cuts, spots)), missing, 1, 1);
  }

  private static Sawn sawn(List<SawCut> cuts, List<Spot> spots) {
    return new Sawn(0, spots, cuts, spots.size() == 2 ? List.of(OFFCUT) : List.of());
  }

  private static LayoutJob job() {
    return job(BLANKS, SHEET, Least.PIECES);
  }

  private static LayoutJob job(List<Blank> blanks, Stock stock, Least least) {
    return new LayoutJob(blanks, List.of(stock), Jobs.mm(2), least);
  }

  private static SawCut cut(
      int number, boolean alongLength, long at, long from, long to, long fence) {
    return new SawCut(
        number, alongLength, Length.mm(at), Length.mm(from), Length.mm(to), Length.mm(fence));
  }

  private static Blank blank(String name, long length, long width) {
    return new Blank(name, Length.mm(length), Length.mm(width), 1, false);
  }
}
