package storyrod.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** A reader of two boards with the same parts in the same places looks for what differs. */
class SawnAlikeTest {
  private static Map<SheetLayout, List<SheetLayout>> byPlaces(SheetPlan plan) {
    return plan.sheets().stream().collect(Collectors.groupingBy(SheetLayout::places));
  }

  @TestFactory
  List<DynamicTest> whatLiesInTheSamePlacesIsSawnInTheSameOrder() {
    return AllProjects.each(
        sample ->
            sample.set().stock().layouts().stream()
                .flatMap(plan -> byPlaces(plan).values().stream())
                .forEach(
                    alike ->
                        assertEquals(1, alike.stream().map(SheetLayout::cuts).distinct().count())));
  }

  /** The slab's staves come one from a board, so most of its boards are alike. */
  @Test
  void theTableHasSuchBoards() {
    assertTrue(
        AllProjects.named("dining-table").stock().layouts().stream()
            .flatMap(plan -> byPlaces(plan).values().stream())
            .anyMatch(alike -> alike.size() > 5));
  }
}
