package storyrod.layout.length;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.layout.Budget;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan;
import storyrod.layout.LayoutReplay;

/** Excerpts of public instances, whose source stands at their head. */
class KnownLengthsTest {
  private static final long STEPS = 2 * Budget.STEPS_A_SECOND;

  static List<String> excerpts() throws IOException {
    try (InputStream in = KnownLengthsTest.class.getResourceAsStream("/lengths/excerpts.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("excerpts")
  void theBestKnownValueIsReachedAndNeverExcluded(String line) {
    String[] fields = line.split(";");
    LayoutJob job = job(fields);
    LayoutPlan plan = Lengths.plan(job, Budget.ofSteps(STEPS));
    assertEquals(List.of(), LayoutReplay.faults(job, plan), fields[0]);
    assertEquals(Long.parseLong(fields[1]), plan.value(), fields[0]);
    assertTrue(plan.lowerBound() <= plan.value(), fields[0]);
  }

  private static LayoutJob job(String[] fields) {
    List<Stock> stock =
        Arrays.stream(fields[3].split(" "))
            .map(each -> each.split(":"))
            .map(
                each ->
                    LengthJobs.stock(
                        Integer.parseInt(each[0]), Stock.UNLIMITED, Long.parseLong(each[1])))
            .toList();
    List<Blank> blanks =
        Arrays.stream(fields[4].split(" "))
            .map(each -> each.split(":"))
            .map(each -> LengthJobs.part(Integer.parseInt(each[0]), Integer.parseInt(each[1])))
            .toList();
    return LengthJobs.job(Double.parseDouble(fields[2]), Least.COST, stock, blanks);
  }
}
