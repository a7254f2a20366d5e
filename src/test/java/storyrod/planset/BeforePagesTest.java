package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.planset.Notes.Caution;
import storyrod.planset.Notes.Finding;
import storyrod.words.Words;

/** Where the bars stand that tell whether the print is true. */
class BeforePagesTest {
  private static final Print PRINT =
      new Print(
          new Texts(new LengthFormat(Unit.MM, 32), Words.ENGLISH),
          Paper.usualFor(Unit.MM),
          Edition.usual(Templates.SHARED),
          new Chosen(Set.of(), Set.of(), true));
  private static final Finding FINDING =
      new Finding("Advice", "The top (Y) is wider than the planer", List.of("Plane the staves"));

  private static List<Outline.Entry> steps(int count, String title) {
    List<Outline.Entry> lines =
        new ArrayList<>(Collections.nCopies(12, Outline.Entry.of("parts", "Parts")));
    IntStream.rangeClosed(1, count)
        .mapToObj(i -> new Outline.Entry("step-" + i, "" + i, title, true, List.of()))
        .forEach(lines::add);
    return lines;
  }

  private static boolean isAboveTheContents(int findings) {
    return before(steps(45, "Cut"), findings).checkFirst();
  }

  private static BeforePages before(List<Outline.Entry> steps, int findings) {
    Notes notes =
        new Notes(List.of(new Caution("Take care", "1")), Collections.nCopies(findings, FINDING));
    return BeforePages.of(notes, steps, PRINT);
  }

  /** Below the contents the findings leave no room: the bars would stand alone on a page. */
  @Test
  void findingsThatFillThePageOfTheContentsSendTheBarsToThePageBefore() {
    List<Boolean> above = IntStream.of(0, 2, 8).mapToObj(i -> isAboveTheContents(i)).toList();
    assertEquals(List.of(false, false, true), above);
  }

  /** Such contents fill their page, so neither the bars nor the findings find room on it. */
  @Test
  void contentsThatFillTheirPageSendTheBarsBeforeThemAndTheFindingsToTheEnd() {
    BeforePages full =
        before(steps(70, "Cut the grooves in the sides, the fronts and three more parts"), 8);
    assertTrue(full.checkFirst());
    assertFalse(full.findingsHere());
  }

  /** Cautions that need a page of their own leave the bars the lower half of the first. */
  @Test
  void barsStandBelowHowToReadThePlanWhereCautionsHaveAPage() {
    List<Caution> many =
        Collections.nCopies(60, new Caution("Take care, and keep your hands off.", "1"));
    List<Outline.Entry> contents = steps(70, "Cut the grooves in the sides and three more parts");
    BeforePages placed = BeforePages.of(new Notes(many, List.of()), contents, PRINT);
    assertTrue(placed.pages().getFirst().breaks());
    assertTrue(placed.checkAtReading() && !placed.checkFirst());
    assertFalse(before(contents, 0).checkAtReading());
  }

  /** Of the long titles each takes two lines: half of the entries are more than half as high. */
  @Test
  void columnsOfTheContentsAreBrokenWhereBothAreAsHigh() {
    List<Outline.Entry> lines =
        new ArrayList<>(
            steps(24, "Cut the grooves in the long frame pieces, the short frame pieces and more"));
    lines.addAll(steps(24, "Cut"));
    List<List<List<Outline.Entry>>> contents = before(lines, 0).contents();
    assertEquals(1, contents.size());
    List<Integer> sizes = contents.getFirst().stream().map(List::size).toList();
    assertEquals(lines.size(), sizes.getFirst() + sizes.getLast());
    assertTrue(sizes.getFirst() + 4 < sizes.getLast(), sizes.toString());
  }

  /** A line for them would stand out of the order of the pages. */
  @Test
  void findingsOnThePageOfTheContentsAreNotNamedByThem() {
    assertFalse(namesFindings(20));
    assertTrue(namesFindings(70));
  }

  private static boolean namesFindings(int steps) {
    List<Outline.Entry> lines =
        new ArrayList<>(steps(steps, "Cut the grooves in the sides, the fronts and three more"));
    lines.add(Outline.Entry.of("findings", "Worth knowing"));
    return before(lines, 8).contents().stream()
        .flatMap(List::stream)
        .flatMap(List::stream)
        .anyMatch(line -> line.anchor().equals("findings"));
  }
}
