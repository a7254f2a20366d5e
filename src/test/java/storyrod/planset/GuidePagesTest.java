package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;

/** What leads a reader through the sideboard's pages: page numbers, the lead of the timeline. */
class GuidePagesTest {
  private static final PlanSet SET = AllProjects.named("sideboard");
  private static final byte[] PDF = new PlanSetWriter(Words.ENGLISH).write(SET).get("plan-set.pdf");
  private static final Pattern OPENED =
      Pattern.compile("stays closed here; it is opened (?:from|on) page (\\d+)");

  @Test
  void closedUnitsNameThePageOnWhichTheyAreOpened() {
    int exploded = page("stays closed here", 1);
    Matcher told = OPENED.matcher(PdfText.text(PDF, exploded).replaceAll("\\s+", " "));
    assertTrue(told.find(), PdfText.text(PDF, exploded));
    int opened = Integer.parseInt(told.group(1));
    assertTrue(PdfText.text(PDF, opened).contains("Face frame"), PdfText.text(PDF, opened));
    assertEquals(exploded + 2, opened, "the hardware's view lies between");
  }

  @Test
  void idleHoursAreToldAsFreeAndNightsAsNotCounted() {
    String text = PdfText.text(PDF, page("decides the end", 1)).replaceAll("\\s+", " ");
    assertTrue(text.contains("of shop time, because glue or finish dries"), text);
    assertTrue(text.contains("Nights are not counted in that."), text);
    assertFalse(text.contains("nothing to do"), text);
  }

  /** The first cut of a layout may be a long one, along which no rough edge may run on a fence. */
  @Test
  void roughBoardsAreSpokenOfOnceWhereTheyAreLaidOut() {
    PlanSet table = AllProjects.named("dining-table");
    for (Words words : List.of(Words.ENGLISH, Words.load("de"))) {
      Texts texts = new Texts(table.piece().description().format(), words);
      List<String> bounds =
          Layouts.of(table, texts, Paper.LETTER).stocks().stream()
              .map(Layouts.Stock::bound)
              .toList();
      assertTrue(bounds.size() > 1, bounds::toString);
      String told = words.say("layout.rough-boards");
      assertEquals(1, bounds.stream().filter(bound -> bound.endsWith(told)).count());
      assertTrue(bounds.getFirst().endsWith(told), bounds::toString);
      Layouts sheets = Layouts.of(SET, texts, Paper.LETTER);
      assertFalse(sheets.stocks().getFirst().bound().contains(told), "sheets are no boards");
    }
  }

  /** A remark is no action, so the first action is the first. */
  @Test
  void remarksOfTheMakerHaveNoNumber() {
    String text = PdfText.text(PDF, page("Note: No glue on the panel.", 1)).replaceAll("\\s+", " ");
    assertFalse(text.matches(".*\\d\\. ?Note:.*"), text);
    assertTrue(text.matches(".*Note: No glue on the panel\\..* 1\\. ?[A-Z].*"), text);
  }

  /** Rounded up, the cover promised an hour more than the work day by day. */
  @Test
  void coverAndTimelineTellTheSameHours() {
    int minutes = SET.schedule().workMinutes();
    long rounded = Math.round(minutes / 60.0);
    String cover = PdfText.text(PDF, 1).replaceAll("\\s+", " ");
    assertTrue(cover.contains("Working time, about " + rounded + " h"), cover);
  }

  /** Step 41 needs nothing of step 39, for whose clamps step 40 waits. */
  @Test
  void whatIsReadyWhileTheNextStepWaitsIsNamed() {
    String text = PdfText.text(PDF, page("What to do while it dries", 3)).replaceAll("\\s+", " ");
    assertTrue(text.contains("ready meanwhile: step"), text);
  }

  /** The posts that carry the catches, too. */
  @Test
  void catchesNameTheStilesOfTheCase() {
    assertEquals(List.of("AA × 2", "K × 2"), parts("Mount the catches"));
  }

  /** The other leaf is screwed to the stiles of the case when the doors are hung. */
  @Test
  void hingesThatGoOnTheDoorsNameTheDoorsAlone() {
    assertEquals(List.of("Z × 2"), parts("Put the hinges back"));
  }

  private static List<String> parts(String title) {
    Print print = Print.of(SET.piece(), SET.build(), Printing.usual(Words.ENGLISH));
    StepWriter writer = new StepWriter(SET.piece(), Words.ENGLISH, new Templates(), SET.build());
    StepPages steps = StepPages.of(SET, new StepPages.Sheet(print, writer::write));
    return steps.stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .filter(step -> step.text().title().equals(title))
        .flatMap(step -> step.parts().stream())
        .map(part -> part.mark() + " × " + part.count())
        .toList();
  }

  private static int page(String words, int from) {
    int page = from;
    while (!PdfText.text(PDF, page).contains(words)) {
      page++;
    }
    return page;
  }
}
