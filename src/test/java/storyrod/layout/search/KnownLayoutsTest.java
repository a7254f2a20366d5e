package storyrod.layout.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.layout.Budget;
import storyrod.layout.Jobs;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutPlan;

/** Jobs of the constructed set furn_known60, whose fewest sheets are proved by area. */
class KnownLayoutsTest {
  record Known(String name, LayoutJob job, int optimum) {
    @Override
    public String toString() {
      return name;
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void theBoundIsTheProvedOptimumAndIsReached(Known known) {
    LayoutPlan plan = Layouts.plan(known.job(), Budget.ofSteps(2 * Budget.STEPS_A_SECOND));
    assertTrue(plan.lowerBound() <= known.optimum(), "no bound may be above the optimum");
    assertEquals(known.optimum(), plan.lowerBound());
    assertEquals(known.optimum(), plan.pieces().size());
    assertTrue(plan.proved());
  }

  static Stream<Known> jobs() throws IOException {
    List<Known> jobs = new ArrayList<>();
    List<Blank> parts = new ArrayList<>();
    List<String> lines = new ArrayList<>(lines());
    Collections.reverse(lines);
    for (String line : lines) {
      String[] fields = line.split(",");
      if (fields[0].equals("part")) {
        parts.add(part(fields));
      } else {
        jobs.add(new Known(fields[1], job(fields, parts), Integer.parseInt(fields[6])));
        parts.clear();
      }
    }
    return jobs.stream();
  }

  private static List<String> lines() throws IOException {
    try (InputStream in = KnownLayoutsTest.class.getResourceAsStream("known_layouts.csv")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.startsWith("#")).toList();
    }
  }

  private static LayoutJob job(String[] fields, List<Blank> parts) {
    return Jobs.job(
        number(fields[4]),
        Jobs.sheet(number(fields[2]), number(fields[3]), number(fields[5])),
        parts);
  }

  private static Blank part(String[] fields) {
    boolean mayTurn = fields[4].equals("0");
    return Jobs.part(number(fields[1]), number(fields[2]), Integer.parseInt(fields[3]), mayTurn);
  }

  private static double number(String field) {
    return Double.parseDouble(field);
  }
}
