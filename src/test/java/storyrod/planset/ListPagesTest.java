package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.planset.CutList.Row;
import storyrod.planset.CutList.Sizes;

class ListPagesTest {
  private static Row row(int number) {
    Sizes sizes = new Sizes("20", "4", "3/4");
    return new Row(
        Integer.toString(number), "Rail", "1", 1, "Ash 3/4", sizes, sizes, "along length", "", "");
  }

  private static List<Integer> pages(int count) {
    CutList list = new CutList(IntStream.range(0, count).mapToObj(ListPagesTest::row).toList());
    Shopping nothing =
        new Shopping(List.of(), List.of(), List.of(), new Supplies(List.of(), false), "", true, "");
    ListPages pages =
        ListPages.of(
            new ListPages.Lengths(
                Paper.LETTER,
                list,
                new GlueUpList(List.of()),
                nothing,
                new HardwareList(List.of()),
                "Sizes in inches.",
                "What is reckoned beyond."));
    assertEquals(list.rows(), pages.cutList().stream().flatMap(List::stream).toList());
    return pages.cutList().stream().map(List::size).toList();
  }

  @Test
  void shortCutListStandsOnOnePage() {
    assertEquals(List.of(4), pages(4));
  }

  @Test
  void noRowStandsAloneOnItsPage() {
    int one =
        IntStream.iterate(1, count -> pages(count).size() == 1, count -> count + 1)
            .max()
            .getAsInt();
    assertTrue(one > 20, () -> one + " rows on the first page");
    assertEquals(List.of(one - 2, 3), pages(one + 1));
    assertEquals(List.of(one - 1, 3), pages(one + 2));
    assertEquals(List.of(one, 3), pages(one + 3));
  }

  @Test
  void laterPagesHoldMoreRowsThanTheFirst() {
    List<Integer> pages = pages(120);
    assertTrue(pages.get(1) > pages.get(0), pages::toString);
  }
}
