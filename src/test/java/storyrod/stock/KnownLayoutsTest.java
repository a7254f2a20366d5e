package storyrod.stock;

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
import storyrod.stock.SheetProblem.Rectangle;
import storyrod.stock.SheetProblem.Sheet;

/** Jobs of the constructed set furn_known60, whose fewest sheets are proved by area. */
class KnownLayoutsTest {
  record Job(String name, SheetProblem problem, int optimum) {
    @Override
    public String toString() {
      return name;
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void theBoundIsTheProvedOptimumAndIsReached(Job job) {
    LayoutEngine.Result result = LayoutEngine.solve(job.problem(), Effort.USUAL);
    assertEquals(List.of(), Layouts.faults(job.problem(), result));
    assertTrue(result.lowerBound() <= job.optimum(), "no bound may be above the optimum");
    assertEquals(job.optimum(), result.lowerBound());
    assertEquals(job.optimum(), result.sheets().size());
  }

  static Stream<Job> jobs() throws IOException {
    List<Job> jobs = new ArrayList<>();
    List<Rectangle> parts = new ArrayList<>();
    List<String> lines = new ArrayList<>(lines());
    Collections.reverse(lines);
    for (String line : lines) {
      String[] fields = line.split(",");
      if (fields[0].equals("part")) {
        parts.addAll(Collections.nCopies(Integer.parseInt(fields[3]), part(fields)));
      } else {
        SheetProblem problem = new SheetProblem(sheet(fields), parts);
        jobs.add(new Job(fields[1], problem, Integer.parseInt(fields[6])));
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

  private static Sheet sheet(String[] fields) {
    return Layouts.sheet(
        number(fields[2]), number(fields[3]), number(fields[4]), number(fields[5]));
  }

  private static Rectangle part(String[] fields) {
    return Layouts.part(number(fields[1]), number(fields[2]), fields[4].equals("0"));
  }

  private static double number(String field) {
    return Double.parseDouble(field);
  }
}
