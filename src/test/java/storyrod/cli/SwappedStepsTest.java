package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Need;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/** Orders of work of the seven projects: without the makers' own, and with two steps swapped. */
class SwappedStepsTest {
  /** Each so-many-eth pair is swapped in the usual run, all in the slow one. */
  private static final int USUAL = 12;

  private static String withoutOrder(String project) throws IOException {
    String text = Files.readString(Path.of("projects", project, "project.yaml"));
    int build = text.indexOf("\nbuild:");
    return build < 0 ? text : text.substring(0, build + 1);
  }

  private static Optional<BuildPlan> plan(String project, String text, Diagnostics found) {
    SourceText source = new SourceText("projects/" + project + "/project.yaml", text);
    Optional<Piece> piece =
        Pipeline.reader().read(source, found).flatMap(read -> PieceBuilder.build(read, found));
    return piece.flatMap(each -> Planner.plan(each, found));
  }

  private static List<Diagnostic> faults(String project, String text) {
    Diagnostics found = new Diagnostics();
    plan(project, text, found);
    return found.sorted();
  }

  private static BuildPlan free(String project) throws IOException {
    Diagnostics found = new Diagnostics();
    return plan(project, withoutOrder(project), found)
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(found.sorted())));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bookcase",
        "dining-table",
        "nightstand",
        "sewing-box",
        "sideboard",
        "step-stool",
        "window-bench"
      })
  void withoutTheMakersOrderThereIsOneWithoutFindings(String project) throws IOException {
    assertEquals(
        faults(project, Files.readString(Path.of("projects", project, "project.yaml"))),
        faults(project, withoutOrder(project)));
    BuildPlan plan = free(project);
    List<String> order = names(plan);
    assertTrue(plan.needs().stream().allMatch(need -> isKept(need, order)));
  }

  private static boolean isKept(Need need, List<String> order) {
    return order.indexOf(need.before()) < order.lastIndexOf(need.after());
  }

  private static List<String> names(BuildPlan plan) {
    return plan.steps().stream()
        .flatMap(step -> step.operations().stream())
        .map(Operation::name)
        .toList();
  }

  /** Steps of which one needs what the other does, directly; the later one first. */
  private static List<List<Step>> dependent(BuildPlan plan) {
    List<List<Step>> pairs = new ArrayList<>();
    for (Step later : plan.steps()) {
      for (Step earlier : plan.steps().subList(0, later.number() - 1)) {
        if (plan.needs().stream().anyMatch(need -> joins(need, earlier, later))) {
          pairs.add(List.of(later, earlier));
        }
      }
    }
    return pairs;
  }

  private static boolean joins(Need need, Step earlier, Step later) {
    return does(earlier, need.before())
        && does(later, need.after())
        && !does(later, need.before())
        && !does(earlier, need.after());
  }

  private static boolean does(Step step, String operation) {
    return step.operations().stream().anyMatch(each -> each.name().equals(operation));
  }

  /** All that two steps do, those of the first first. */
  private static String order(List<Step> steps) {
    Set<String> names = new LinkedHashSet<>();
    steps.forEach(step -> step.operations().forEach(each -> names.add(each.name())));
    return "build:\n  - {stage: Swapped, order: [" + String.join(", ", names) + "]}\n";
  }

  /** A way in can change with the order; then parts that go together as well are no breach. */
  private static boolean isCaught(String text, List<Step> swapped) {
    Diagnostics found = new Diagnostics();
    Optional<BuildPlan> plan = plan("sideboard", text + order(swapped), found);
    boolean isCaught =
        found.sorted().stream().anyMatch(fault -> fault.code().equals("order-breaks-rule"));
    boolean areFits = swapped.stream().allMatch(step -> step.verb() == Verb.FIT);
    return isCaught
        || areFits
            && plan.filter(other -> other.needs().stream().noneMatch(n -> joins(n, swapped)))
                .isPresent();
  }

  private static boolean joins(Need need, List<Step> swapped) {
    return joins(need, swapped.getLast(), swapped.getFirst());
  }

  private static void swapEvery(int nth) throws IOException {
    String text = withoutOrder("sideboard");
    List<List<Step>> pairs = dependent(free("sideboard"));
    assertTrue(pairs.size() > 300, () -> "pairs: " + pairs.size());
    List<String> uncaught =
        IntStream.range(0, pairs.size())
            .filter(i -> i % nth == 0)
            .parallel()
            .mapToObj(pairs::get)
            .filter(swapped -> !isCaught(text, swapped))
            .map(SwappedStepsTest::order)
            .toList();
    assertEquals(List.of(), uncaught);
  }

  @Test
  void swappedStepsOfTheSideboardAreCaught() throws IOException {
    swapEvery(USUAL);
  }

  @Test
  @Tag("slow")
  void allSwappedStepsOfTheSideboardAreCaught() throws IOException {
    swapEvery(1);
  }
}
