package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Packing.Item;

class PackingTest {
  private static final List<Double> HEIGHTS = List.of(200.0, 150.0, 120.0, 95.0);

  private static int pages(Item item) {
    return Packing.pages(List.of(item, item, item, item), 200, 4).size();
  }

  @Test
  void whatIsBetterLargerGetsAPageOfItsOwn() {
    assertEquals(4, pages(new Item(HEIGHTS)));
  }

  @Test
  void whatIsLargeEnoughSharesAPage() {
    assertEquals(2, pages(new Item(HEIGHTS, 100)));
  }

  @Test
  void aloneOnItsPageItIsAsLargeAsItCanBe() {
    List<Packing.Page> pages = Packing.pages(List.of(new Item(HEIGHTS, 100)), 200, 4);
    assertEquals(List.of(0), pages.getFirst().choices());
  }

  /** Of a large, a middling and a small thing the small one stood alone on the last page. */
  @Test
  void nothingSmallIsLeftOverForTheLastOfEvenPages() {
    List<Item> items =
        List.of(new Item(List.of(147.0)), new Item(List.of(87.0, 73.0)), Item.of(60));
    assertEquals(List.of(0, 2), firsts(Packing.pages(items, 224, 3)));
    assertEquals(List.of(0, 1), firsts(Packing.evenPages(items, 224, 3)));
  }

  private static List<Integer> firsts(List<Packing.Page> pages) {
    return pages.stream().map(Packing.Page::first).toList();
  }
}
