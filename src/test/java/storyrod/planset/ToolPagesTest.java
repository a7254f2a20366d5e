package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.SettingTools;
import storyrod.drawing.AllProjects;
import storyrod.measure.Length;
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
          for (StepEntry step : pages.steps().all()) {
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
          assertEquals(atHand(named), listed);
        });
  }

  /** A bandsaw that is there anyway does what a bandsaw or a jigsaw is asked for. */
  private static Map<String, TreeSet<Integer>> atHand(Map<String, TreeSet<Integer>> named) {
    Map<String, TreeSet<Integer>> once = new TreeMap<>();
    named.forEach(
        (tool, steps) ->
            once.computeIfAbsent(
                    named.keySet().stream()
                        .filter(other -> tool.matches(Pattern.quote(other) + ",? or .*"))
                        .findFirst()
                        .orElse(tool),
                    each -> new TreeSet<>())
                .addAll(steps));
    return once;
  }

  /** No tool is told twice, by itself and as one of two that would do. */
  @Test
  void aToolStandsOnceAmongMachinesAndTools() {
    PlanSet set = AllProjects.named("bookcase");
    List<String> tools =
        pages(set).tools().all().stream()
            .flatMap(part -> part.rows().stream())
            .flatMap(List::stream)
            .map(ToolPages.Tool::name)
            .filter(name -> name.matches("(?i)band ?saw.*"))
            .toList();
    assertEquals(List.of("Bandsaw"), tools);
    Print print = Print.of(set.piece(), set.build(), usual());
    String machines = Cover.of(set, print).facts().getLast().value();
    assertTrue(machines.endsWith("; jigsaw"), machines);
    assertFalse(machines.contains("or jigsaw"), machines);
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

  private static String sizes(Pages pages, String tool) {
    return pages.tools().all().stream()
        .flatMap(part -> part.rows().stream())
        .flatMap(List::stream)
        .filter(each -> each.name().equals(tool))
        .map(ToolPages.Tool::sizes)
        .findFirst()
        .orElse("");
  }

  /** Who packs the tools before the work sees which bits to bring. */
  @Test
  void bitsAreListedInTheSizesThatStepsUse() {
    Pages pages = pages(AllProjects.named("nightstand"));
    assertEquals("4.4 mm, 5 mm", sizes(pages, "Brad-point bit"));
    assertEquals("2 mm, 2.8 mm", sizes(pages, "Pilot bit"));
    assertEquals("8 mm", sizes(pages, "Countersink bit"));
    assertEquals("cuts of 18 mm", sizes(pages, "Straight or spiral bit"));
    assertEquals(
        "cuts of 7 mm",
        sizes(pages, "Mortise chisel and mallet, or router with edge guide and straight bit"));
    assertEquals("", sizes(pages, "Drill"));
  }

  /** No step says that clamps open further, or that more are set, than the list tells. */
  @TestFactory
  List<DynamicTest> clampsAreListedForTheMostAndTheWidestOfAllSteps() {
    Pattern opening = Pattern.compile("(?:open|opens) (?:up to )?(.+? (?:in|mm)),");
    return AllProjects.each(
        project -> {
          PlanSet set = project.set();
          Pages pages = pages(set);
          Matcher told =
              Pattern.compile("(\\d+) at once, at most, opening (.+ (?:in|mm)) or more")
                  .matcher(sizes(pages, "Bar clamps"));
          assertTrue(told.matches(), sizes(pages, "Bar clamps"));
          Length widest = Length.parse(told.group(2));
          for (StepEntry step : pages.steps().all()) {
            Matcher said = opening.matcher(String.join(" ", step.text().sentences()));
            while (said.find()) {
              assertFalse(Length.parse(said.group(1)).isLongerThan(widest));
            }
            int clamps = set.build().steps().get(step.number() - 1).glueUp().clamps();
            assertTrue(clamps <= Integer.parseInt(told.group(1)), told.group());
          }
          int shop = set.piece().description().shop().clamps();
          assertTrue(Integer.parseInt(told.group(1)) <= shop, told.group());
        });
  }

  /** A name of several lines stands beside the first setting of its tool only. */
  @Test
  void longNamesDoNotSpreadTheSettingsOverAnotherPage() {
    Pages pages = pages(AllProjects.named("nightstand"));
    long begun =
        pages.tools().set().stream().filter(TableFlow.Part::breaks).count()
            + pages.tools().all().stream().filter(TableFlow.Part::breaks).count();
    assertEquals(2, begun);
  }

  /** Two tools may have one name in some language: they are told apart by their keys. */
  @Test
  void toolsAreMatchedByTheirKeysAndNotByTheirWords() {
    StepText text =
        new StepText(
            "Glue it",
            List.of(),
            List.of(),
            List.of(new StepText.ToolText("glue-brush", "brush")),
            List.of(),
            "1 h",
            "");
    assertTrue(text.uses("glue-brush"));
    assertFalse(text.uses("finish-brush"));
    assertFalse(text.uses("brush"));
  }

  @TestFactory
  List<DynamicTest> whatScrapesIsListed() {
    return AllProjects.each(
        project -> {
          for (StepEntry step : pages(project.set()).steps().all()) {
            boolean scrapes =
                step.text().sentences().stream().anyMatch(each -> each.startsWith("Scrape "));
            assertTrue(!scrapes || step.text().uses("scraper"), step.text()::toString);
          }
        });
  }
}
