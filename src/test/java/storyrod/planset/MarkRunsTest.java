package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Cells with more marks than a page has lines. */
class MarkRunsTest {
  private static final List<String> ORDER = IntStream.range(0, 60).mapToObj(i -> "P" + i).toList();

  private static final MarkRuns RUNS = new MarkRuns(ORDER);

  @Test
  void aFewAreToldEach() {
    assertEquals("P0, P1, P2, P3", RUNS.text(ORDER.subList(0, 4)));
  }

  @Test
  void manyAreToldByFirstAndLast() {
    assertEquals("P0–P59", RUNS.text(ORDER));
    List<String> some = new ArrayList<>(ORDER);
    some.removeAll(List.of("P2", "P57"));
    assertEquals("P0, P1, P3–P56, P58, P59", RUNS.text(some));
  }
}
