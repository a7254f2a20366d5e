package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.SettingTools;
import storyrod.drawing.AllProjects;
import storyrod.planset.ToolPages.Row;
import storyrod.words.Words;

/** The list of tools and settings, held to the steps. */
class ToolPagesTest {
  private static Pages pages(PlanSet set) {
    Print print = Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH));
    return Pages.of(set, print, new StepTexts(set.piece(), set.build()).in(usual()));
  }

  private static Printing usual() {
    return Printing.usual(Words.ENGLISH);
  }

  private static List<Row> rows(Pages pages) {
    return pages.tools().set().stream().flatMap(part -> part.rows().stream()).toList();
  }

  private static TreeSet<Integer> numbers(StepRuns runs) {
    TreeSet<Integer> numbers = new TreeSet<>();
    runs.runs().forEach(run -> IntStream.rangeClosed(run.from(), run.to()).forEach(numbers::add));
    return numbers;
  }

  @Test
  void runsOfStepsAreTold() {
    assertEquals("2–4, 7, 9–10", StepRuns.of(List.of(9, 2, 3, 4, 7, 10, 3)).text());
  }

  @TestFactory
  List<DynamicTest> everyToolStandsWithAllStepsThatNameIt() {
    return AllProjects.each(
        project -> {
          Pages pages = pages(project.set());
          Map<String, TreeSet<Integer>> named = new TreeMap<>();
          for (StepPages.Entry step : pages.steps().all()) {
            for (String tool : step.text().tools()) {
              named
                  .computeIfAbsent(Texts.capital(tool), each -> new TreeSet<>())
                  .add(step.number());
            }
          }
          Map<String, TreeSet<Integer>> listed = new TreeMap<>();
          pages.tools().all().stream()
              .flatMap(part -> part.rows().stream())
              .flatMap(List::stream)
              .forEach(tool -> listed.put(tool.name(), numbers(tool.steps())));
          assertEquals(named, listed);
        });
  }

  /** No value of a step is left out, and none is told twice. */
  @TestFactory
  List<DynamicTest> everySettingStandsOnceWithItsSteps() {
    return AllProjects.each(
        project -> {
          PlanSet set = project.set();
          List<Row> rows = rows(pages(set));
          SettingWords words = new SettingWords(set.piece(), Words.ENGLISH);
          for (Step step : set.build().steps()) {
            for (Setting setting : step.settings()) {
              boolean isOnce = setting.part().isEmpty();
              if (isOnce && SettingTools.STANDARD.of(setting, step.tools()::contains).isPresent()) {
                StepText.SettingText text = words.text(setting);
                long count =
                    rows.stream()
                        .filter(row -> row.name().equals(text.name()))
                        .filter(row -> row.value().equals(text.value()))
                        .filter(row -> numbers(row.steps()).contains(step.number()))
                        .count();
                assertEquals(1, count, step.number() + " " + text);
              }
            }
          }
          assertEquals(
              rows.size(),
              rows.stream().map(r -> r.tool() + r.name() + r.value()).distinct().count());
          assertTrue(rows.size() > 5, rows.toString());
        });
  }
}
