package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.cli.Pipeline;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.drawing.AllProjects;
import storyrod.piece.Mark;
import storyrod.planset.Recorded.Sized;
import storyrod.words.Words;

/** What is recorded beside what is planned, and the room that is left for what is not. */
class RecordingTest {
  private static final PlanSet STOOL = AllProjects.named("step-stool");
  private static final PlanSet SIDEBOARD = AllProjects.named("sideboard");

  private static Recorded recorded(PlanSet set, boolean lines) {
    Texts texts = new Texts(set.piece().description().printed(), Words.ENGLISH);
    return new Recording(set, texts, lines).recorded();
  }

  private static List<String> rows(Recorded recorded, Mark mark) {
    return recorded.sizes().stream()
        .filter(row -> row.mark().equals(mark.mark()))
        .map(Sized::part)
        .toList();
  }

  private static PlanSet bars(int count) {
    String bars =
        IntStream.rangeClosed(1, count)
            .mapToObj(
                each ->
                    "  bar-%d: {title: Bar, stock: oak, x: 0 to 300, y: 0 to 40, z: %d to %d, grain: x}\n"
                        .formatted(each, 50 * each, 50 * each + 20))
            .collect(Collectors.joining());
    String text =
        """
        project: Bars
        units: mm
        stock:
          oak: {kind: solid, species: "oak, white", thickness: 20}
        parts:
        %srecord:
          made:
            - {part: bar-2, length: 299}
        """
            .formatted(bars);
    Diagnostics diagnostics = new Diagnostics();
    return Pipeline.planSet(new SourceText("project.yaml", text), diagnostics).orElseThrow();
  }

  @Test
  void eachPieceHasARowOfItsOwnUpToFourOfAMark() {
    Recorded recorded = recorded(SIDEBOARD, true);
    for (Mark mark : SIDEBOARD.piece().marks()) {
      int expected = mark.count() > 4 ? 1 : mark.count();
      assertEquals(expected, rows(recorded, mark).size(), mark.toString());
    }
  }

  @Test
  void piecesAreNumberedAsOnTheirLabels() {
    PlanSet bars = bars(3);
    Recorded recorded = recorded(bars, true);
    List<String> numbers =
        recorded.sizes().stream().map(row -> row.part().replaceFirst("^.*, ", "")).toList();
    assertEquals(List.of("1 of 3", "2 of 3", "3 of 3"), numbers);
    assertEquals("299", recorded.sizes().get(1).made().length());
  }

  @Test
  void manyEqualPiecesShareARowButForThoseMeasured() {
    PlanSet bars = bars(6);
    List<Sized> sizes = recorded(bars, true).sizes();
    assertEquals(2, sizes.size());
    assertTrue(sizes.get(0).part().endsWith(", 2 of 6"), sizes.get(0).part());
    assertTrue(sizes.get(1).part().startsWith("5 × "), sizes.get(1).part());
  }

  @Test
  void whatIsRecordedLeavesRowsForHandwritingBelowIt() {
    Recorded recorded = recorded(STOOL, true);
    assertEquals(4, recorded.revisions().size());
    assertEquals("", recorded.revisions().getLast().change());
    assertEquals(4, recorded.testPieces().size());
    assertEquals(6, recorded.steps().size());
    long stocks = STOOL.stock().boards().size();
    assertTrue(recorded.boards().size() >= 3 * stocks, recorded.boards().toString());
    assertEquals("", recorded.boards().getLast().measured());
  }

  @Test
  void whereNothingIsFilledInOnlyWhatIsRecordedStands() {
    Recorded recorded = recorded(STOOL, false);
    assertEquals(2, recorded.revisions().size());
    assertEquals(2, recorded.testPieces().size());
    assertEquals(1, recorded.steps().size());
    assertEquals(2, recorded.boards().size());
  }

  @Test
  void aTotalOfSomeRowsOnlyIsOneSoFar() {
    String soFar = Words.ENGLISH.say("record.so-far");
    assertEquals(soFar, recorded(AllProjects.named("nightstand"), true).hours().total().say());
    assertEquals("", recorded(SIDEBOARD, true).hours().total().say());
    assertEquals("", recorded(STOOL, true).costs().total().say());
  }
}
