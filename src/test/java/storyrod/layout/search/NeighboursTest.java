package storyrod.layout.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.layout.Jobs.mm;
import static storyrod.layout.Jobs.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.layout.Budget;
import storyrod.layout.Jobs;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.measure.Length;

class NeighboursTest {
  private static final Budget SHORT = Budget.ofSteps(20_000);

  @Test
  void frontsLieEndToEndInTheirOrderWithOnlyTheBladeBetweenThem() {
    List<Blank> blanks =
        List.of(
            part(300, 150, false),
            part(700, 200, false),
            part(400, 150, false),
            part(200, 140, false));
    LayoutJob job = Jobs.job(3, Jobs.sheet(2000, 500, 0), blanks);
    LayoutPlan plan =
        Neighbours.plan(job, List.of(new Neighbours.Group(List.of(2, 0, 3), true)), SHORT);
    Area first = area(plan, 2);
    Area second = area(plan, 0);
    Area third = area(plan, 3);
    assertEquals(first.x().plus(mm(403)), second.x());
    assertEquals(second.x().plus(mm(303)), third.x());
    assertEquals(List.of(first.y(), first.y()), List.of(second.y(), third.y()));
  }

  @Test
  void doorsLieSideBySideAndNarrowOnesAreRippedBesideEachOther() {
    List<Blank> blanks = List.of(part(600, 300, false), part(580, 320, false));
    LayoutJob job = Jobs.job(4, Jobs.sheet(1000, 700, 0), blanks);
    LayoutPlan plan =
        Neighbours.plan(job, List.of(new Neighbours.Group(List.of(1, 0), false)), SHORT);
    Area left = area(plan, 1);
    Area right = area(plan, 0);
    assertEquals(left.y().plus(mm(324)), right.y());
    assertEquals(left.x(), right.x());
  }

  @Test
  void aGroupThatFitsNowhereIsMissingAsAWhole() {
    List<Blank> blanks = List.of(part(600, 300, false), part(600, 300, false));
    LayoutJob job = Jobs.job(3, Jobs.sheet(1000, 700, 0), blanks);
    LayoutPlan plan =
        Neighbours.plan(job, List.of(new Neighbours.Group(List.of(0, 1), true)), SHORT);
    assertEquals(List.of(0, 1), plan.missing().stream().map(LayoutPlan.Missing::blank).toList());
    assertTrue(plan.missing().stream().noneMatch(LayoutPlan.Missing::fits));
  }

  /** The plan itself has been sawn again by the replay; here only the neighbours are held. */
  @Test
  void randomGroupsStayTogetherTurnedOrNot() {
    Random random = new Random(11);
    for (int job = 0; job < 60; job++) {
      List<Blank> blanks = new ArrayList<>();
      boolean mayTurn = random.nextBoolean();
      for (int i = 0; i < 3 + random.nextInt(8); i++) {
        blanks.add(part(80 + random.nextInt(220), 40 + random.nextInt(160), mayTurn));
      }
      boolean endToEnd = random.nextBoolean();
      double kerf = random.nextInt(9) / 2.0;
      LayoutJob asked = Jobs.job(kerf, Jobs.sheet(1000, 700, 0), blanks);
      LayoutPlan plan =
          Neighbours.plan(asked, List.of(new Neighbours.Group(List.of(0, 2, 1), endToEnd)), SHORT);
      boolean isAlongX = endToEnd != spot(plan, 0).turned();
      List<Length> places =
          List.of(0, 2, 1).stream()
              .map(blank -> isAlongX ? area(plan, blank).x() : area(plan, blank).y())
              .toList();
      assertEquals(places.stream().sorted().toList(), places, "job " + job);
      Area first = area(plan, 0);
      Length end = isAlongX ? first.x().plus(first.length()) : first.y().plus(first.width());
      assertEquals(end.plus(mm(kerf)), places.get(1), "job " + job);
    }
  }

  private static Area area(LayoutPlan plan, int blank) {
    return spot(plan, blank).area();
  }

  private static Spot spot(LayoutPlan plan, int blank) {
    return plan.pieces().stream()
        .map(Sawn::spots)
        .flatMap(List::stream)
        .filter(spot -> spot.blank() == blank)
        .min(Comparator.comparing(spot -> spot.area().x()))
        .orElseThrow();
  }
}
