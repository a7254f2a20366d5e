package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.drawing.AllProjects;
import storyrod.planset.JoineryPages.Entry;
import storyrod.words.Words;

/** The pages of the joints. */
class JoineryPagesTest {
  private static JoineryPages pages(PlanSet set) {
    return JoineryPages.of(set, Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH)));
  }

  private static Stream<Entry> placed(JoineryPages pages) {
    return pages.pages().stream().flatMap(List::stream).flatMap(List::stream);
  }

  @TestFactory
  List<DynamicTest> eachJointIsOnThePagesOnce() {
    return AllProjects.each(
        sample -> {
          JoineryPages pages = pages(sample.set());
          assertEquals(pages.entries(), placed(pages).toList());
          assertEquals(
              sample.set().piece().joints().size(), placed(pages).mapToInt(Entry::count).sum());
        });
  }

  /** Every joint is closed in a step, and what has cuts has steps that make them. */
  @TestFactory
  List<DynamicTest> itsStepsAreNamed() {
    return AllProjects.each(
        sample ->
            placed(pages(sample.set()))
                .forEach(
                    entry -> {
                      assertFalse(entry.fit().runs().isEmpty(), entry.title());
                      assertEquals(
                          entry.lines().isEmpty(), entry.cut().runs().isEmpty(), entry.title());
                    }));
  }

  /** Clearance holes are drilled on the bench, their pilots where each of the parts comes in. */
  @ParameterizedTest
  @CsvSource({
    "step-stool, B, C, '15, 23–24'",
    "window-bench, D, C, '20, 35'",
    "sideboard, D, F, '27, 45'",
    "sideboard, AG, C, '27, 47'"
  })
  void pilotsInPlaceAreCutsToo(String project, String one, String other, String steps) {
    List<String> cut =
        placed(pages(AllProjects.named(project)))
            .filter(entry -> joins(entry, Set.of(one, other)))
            .map(entry -> entry.cut().text())
            .toList();
    assertTrue(cut.contains(steps), cut.toString());
  }

  private static boolean joins(Entry entry, Set<String> marks) {
    return entry.between().stream()
        .anyMatch(pair -> Set.of(pair.first(), pair.second()).equals(marks));
  }

  /** A cut is made before its joint is closed. */
  @TestFactory
  List<DynamicTest> cutsComeFirst() {
    return AllProjects.each(
        sample ->
            placed(pages(sample.set()))
                .filter(entry -> !entry.cut().runs().isEmpty())
                .forEach(
                    entry ->
                        assertTrue(
                            entry.cut().runs().getFirst().from()
                                <= entry.fit().runs().getLast().to(),
                            entry.title())));
  }

  @TestFactory
  List<DynamicTest> marksAreThoseOfParts() {
    return AllProjects.each(
        sample -> {
          Set<String> marks =
              sample.set().piece().marks().stream().map(m -> m.mark()).collect(Collectors.toSet());
          placed(pages(sample.set()))
              .flatMap(entry -> entry.between().stream())
              .forEach(pair -> assertTrue(marks.containsAll(List.of(pair.first(), pair.second()))));
        });
  }

  /** The sentences above the joints have room for two lines on the narrowest paper. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void theLeadKeepsToItsLines(String language) {
    String lead = Templates.SHARED.words(language).orElseThrow().say("joinery.lead");
    TextMeasure measure = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.3);
    double width = Math.min(Paper.A4.textWidthMm(), Paper.LETTER.textWidthMm());
    assertTrue(measure.heightMm(lead, width) < 2.5 * measure.lineMm(), lead);
  }

  /** Rows are filled from the left, and pages evenly: a last page with one row would be empty. */
  @Test
  void rowsAreFull() {
    JoineryPages pages = pages(AllProjects.named("window-bench"));
    List<List<Entry>> rows = pages.pages().stream().flatMap(List::stream).toList();
    IntStream.range(0, rows.size() - 1)
        .forEach(i -> assertEquals(pages.columns(), rows.get(i).size()));
    IntSummaryStatistics counts = pages.pages().stream().mapToInt(List::size).summaryStatistics();
    assertTrue(counts.getMax() - counts.getMin() <= 1, counts.toString());
  }

  /** Later pages hold a row more than the heading and its lead leave the first. */
  @ParameterizedTest
  @CsvSource({"bookcase, '3, 3'", "nightstand, '3, 4'"})
  void noJointIsLeftOverForAPageOfItsOwn(String project, String rows) {
    List<String> counts =
        pages(AllProjects.named(project)).pages().stream()
            .map(List::size)
            .map(String::valueOf)
            .toList();
    assertEquals(rows, String.join(", ", counts));
  }

  /** The heading stands once, with its lead; the next page has the running head alone. */
  @Test
  void theHeadingStandsOnce() {
    byte[] pdf =
        new PlanSetWriter(Words.ENGLISH).write(AllProjects.named("bookcase")).get("plan-set.pdf");
    int first =
        IntStream.iterate(1, page -> page + 1)
            .filter(page -> PdfText.text(pdf, page).contains("Each joint once"))
            .findFirst()
            .orElseThrow();
    assertEquals(2, titles(pdf, first));
    assertEquals(1, titles(pdf, first + 1));
    assertFalse(PdfText.text(pdf, first + 1).contains("Each joint once"));
  }

  private static int titles(byte[] pdf, int page) {
    return PdfText.text(pdf, page).split("Joinery details", -1).length - 1;
  }
}
