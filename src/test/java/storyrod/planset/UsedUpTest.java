package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** Whatever small thing a sentence takes up stands in the shopping list, with its steps. */
class UsedUpTest {
  /** By the item, the words of sentences that use it up. */
  private static final Map<String, String> WORDS = new TreeMap<>();

  static {
    WORDS.put("double-sided tape", "double-sided tape");
    WORDS.put("masking tape", "mask with tape|[^g] tape over|wrap it in tape");
    WORDS.put("wood filler", "fill the holes?:");
    WORDS.put("paraffin wax", "paraffin wax");
    WORDS.put("mineral spirits", "mineral spirits");
    WORDS.put("brush for the glue", "[Bb]rush (a thin coat of )?glue");
  }

  private static Pages pages(PlanSet set) {
    Printing usual = Printing.usual(Words.ENGLISH);
    Print print = Print.of(set.piece(), set.build(), usual);
    return Pages.of(set, print, new StepTexts(set.piece(), set.build()).in(usual));
  }

  @TestFactory
  List<DynamicTest> whatSentencesUseUpIsInTheShoppingList() {
    return AllProjects.each(
        project -> {
          Pages pages = pages(project.set());
          UsedUp used = pages.shopping().besides();
          for (StepEntry step : pages.steps().all()) {
            String said = String.join(" ", step.text().sentences());
            WORDS.forEach(
                (item, words) ->
                    assertTrue(
                        !Pattern.compile(words).matcher(said).find()
                            || isUsed(used, item, step.number()),
                        () -> step.number() + " uses " + item + ": " + used));
          }
          assertEquals("", used.sentence().replaceFirst(".*no line above counts: .+\\)\\.$", ""));
        });
  }

  private static boolean isUsed(UsedUp used, String item, int step) {
    return used.things().stream()
        .filter(thing -> thing.item().equals(item))
        .anyMatch(thing -> stepsOf(thing.where()).contains(step));
  }

  private static List<Integer> stepsOf(String where) {
    return List.of(where.replaceFirst("steps? ", "").split(", ")).stream()
        .map(run -> run.split("–"))
        .flatMap(
            run ->
                IntStream.rangeClosed(
                        Integer.parseInt(run[0]), Integer.parseInt(run[run.length - 1]))
                    .boxed())
        .toList();
  }

  /** A thing without an amount has no price either, and the costs add up as before. */
  @TestFactory
  List<DynamicTest> itsRowsHaveNoAmountAndNoCost() {
    return AllProjects.each(
        project -> {
          List<String> rows =
              new String(
                      new PlanSetWriter(Words.ENGLISH).write(project.set()).get("shopping.csv"),
                      StandardCharsets.UTF_8)
                  .lines()
                  .filter(line -> line.startsWith("Used up besides,"))
                  .toList();
          assertTrue(rows.size() >= 2, rows::toString);
          rows.forEach(row -> assertTrue(row.matches(".*,,,,\"?steps? [^\"]*\"?,,,,,"), row));
        });
  }
}
