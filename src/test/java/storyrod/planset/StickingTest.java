package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The caution for spirits stands on the steps whose words use spirits, and on no others. */
class StickingTest {
  private static final String TITLE = "Felt dot 3/8 in, self-adhesive";
  private static final String LAST = "clear paste wax, kind: wax";

  /** Whether the step that fits the sewing box's felt dots warns of spirits, and uses them. */
  private static String spirits(String title, String last, Words words) throws IOException {
    Piece piece =
        StepWordsTest.piece("sewing-box", text -> text.replace(TITLE, title).replace(LAST, last));
    BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
    Step step =
        plan.steps().stream()
            .filter(each -> each.verb() == Verb.MOUNT)
            .filter(each -> each.operations().getFirst().target().equals("dot"))
            .findFirst()
            .orElseThrow();
    StepText told = new StepWriter(piece, words, new Templates(), plan).write(step);
    String said = String.join(" ", told.sentences());
    String used = said.contains("mineral spirits") || said.contains("Testbenzin") ? "used" : "-";
    return (step.cautions().contains("spirits") ? "warned" : "-") + " " + used;
  }

  @ParameterizedTest
  @ValueSource(strings = {TITLE, "Filzpunkt 10 mm, selbstklebend", "Stick-on felt dot"})
  void whatSticksToWaxIsWarnedOfInEachLanguage(String title) throws IOException {
    assertEquals("warned used", spirits(title, LAST, Words.ENGLISH));
    assertEquals("warned used", spirits(title, LAST, Words.load("de")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        TITLE + ";clear varnish, kind: oil-varnish",
        "Felt dot;" + LAST,
      })
  void whereNothingSticksToWaxThereAreNoSpirits(String title, String last) throws IOException {
    assertEquals("- -", spirits(title, last, Words.ENGLISH));
  }
}
