package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.planset.TableFlow.Part;
import storyrod.planset.TableFlow.Table;

/** Tables that are broken between rows. */
class TableFlowTest {
  private static final double ROOM = 100;

  private static Table<Integer> table(int rows) {
    return new Table<>(5, 15, 10, Collections.nCopies(rows, 1), row -> 5.0);
  }

  private static List<Integer> sizes(List<Part<Integer>> parts) {
    return parts.stream().map(part -> part.rows().size()).toList();
  }

  @Test
  void aTableThatHasRoomBelowStandsThere() {
    List<Part<Integer>> parts = new TableFlow(ROOM, 30).place(table(11));
    assertEquals(List.of(11), sizes(parts));
    assertEquals(List.of(false), parts.stream().map(Part::breaks).toList());
  }

  @Test
  void whereItsHeadAndThreeRowsHaveNoRoomItBeginsAPage() {
    List<Part<Integer>> parts = new TableFlow(ROOM, 75).place(table(5));
    assertEquals(List.of(5), sizes(parts));
    assertTrue(parts.getFirst().breaks() && parts.getFirst().first());
  }

  /** 17 rows have room on the first page; the 18th would stand alone on the second. */
  @Test
  void noRowOrTwoStandAlone() {
    assertEquals(List.of(15, 3), sizes(new TableFlow(ROOM, 0).place(table(18))));
  }

  @Test
  void aLongTableRunsOnOverManyPages() {
    List<Part<Integer>> parts = new TableFlow(ROOM, 0).place(table(300));
    assertEquals(300, parts.stream().mapToInt(part -> part.rows().size()).sum());
    assertTrue(parts.stream().allMatch(part -> part.rows().size() <= 18), sizes(parts).toString());
    assertEquals(1, parts.stream().filter(Part::first).count());
  }

  @Test
  void aRowHigherThanAPageStillStandsOnOne() {
    Table<Integer> high = new Table<>(5, 15, 10, List.of(1, 1), row -> 500.0);
    assertEquals(List.of(1, 1), sizes(new TableFlow(ROOM, 50).place(high)));
  }

  /** Filled one after the other, the last page would hold 4 of 21 rows: 30 of 100 mm. */
  @Test
  void theLastPageIsNotNearlyEmpty() {
    List<Table<Integer>> tables = List.of(table(21));
    assertEquals(List.of(17, 4), sizes(new TableFlow(ROOM, 0).place(table(21))));
    List<Part<Integer>> parts = TableFlow.balanced(ROOM, 0, tables).place(table(21));
    assertEquals(2, parts.size());
    assertTrue(10 + 5 * parts.getLast().rows().size() >= 43, sizes(parts).toString());
  }
}
