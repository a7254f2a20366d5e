package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.planset.JoineryPages.Pair;

/** The marks of a joint that is found in many places. */
class JoinedPairsTest {
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.3);
  private static final double CELL_MM = 80;

  private static List<Pair> pairs(int count, boolean shared) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Pair("B" + i, shared ? "A" : "C" + i, 1))
        .toList();
  }

  private static int told(JoinedPairs marks) {
    return marks.groups().stream().mapToInt(each -> each.partners().size()).sum();
  }

  @Test
  void fewPairsAreToldOneByOne() {
    JoinedPairs marks = JoinedPairs.of(pairs(3, true), TEXT, CELL_MM);
    assertEquals("B0 – A (1), B1 – A (1), B2 – A (1) … 0", marks.text());
  }

  /** All of them stand there, each as one mark. */
  @Test
  void manyPairsAreToldByThePartThatTheyShare() {
    JoinedPairs marks = JoinedPairs.of(pairs(200, true), TEXT, CELL_MM);
    assertTrue(marks.text().startsWith("A – B0, B1, "), marks.text());
    assertEquals(200, told(marks));
    assertEquals(0, marks.more());
  }

  /** What a page cannot hold is counted. */
  @Test
  void noMorePairsAreToldThanAPageHolds() {
    JoinedPairs marks = JoinedPairs.of(pairs(900, false), TEXT, CELL_MM);
    assertTrue(TEXT.heightMm(marks.text(), CELL_MM) <= 130);
    assertTrue(told(marks) > 100, marks.text());
    assertEquals(900, told(marks) + marks.more());
  }
}
