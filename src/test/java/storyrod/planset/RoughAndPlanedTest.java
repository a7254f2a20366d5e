package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.words.Words;

/** A board has one thickness in the rough and another when planed; no list may mix the two up. */
class RoughAndPlanedTest {
  /**
   * Grading rules of the hardwood trade name boards from an inch on by quarters and thinner ones
   * (3/8, 1/2, 5/8 and 3/4) by their inches; from memory.
   */
  @Test
  void onlyBoardsFromAnInchOnAreCountedByQuarters() {
    LengthFormat inches = AllProjects.named("sewing-box").piece().description().format();
    assertEquals(
        List.of("3/8 in", "1/2 in", "3/4 in", "4/4", "5/4", "6/4", "8/4"),
        Stream.of(3, 4, 6, 8, 10, 12, 16)
            .map(eighths -> Shopping.boughtAs(Length.inch(eighths, 8), inches))
            .toList());
  }

  @Test
  void whatIsBoughtRoughSaysWhatPlaningLeaves() {
    assertEquals(
        List.of(
            "Black cherry, 1 in when planed: 5/4 rough",
            "Black cherry, 3/4 in when planed: 4/4 rough",
            "Black cherry, 1/2 in when planed: 3/4 in rough",
            "Black cherry, quarter-sawn, 1/2 in when planed: 3/4 in rough",
            "Sugar (hard) maple, 1/4 in when planed: 1/2 in rough"),
        boards("sewing-box"));
    assertEquals(
        List.of(
            "European oak, 20 mm when planed: 27 mm rough",
            "European oak, 45 mm when planed: 52 mm rough"),
        boards("nightstand"));
  }

  private static List<String> boards(String name) {
    PlanSet set = AllProjects.named(name);
    Texts texts = new Texts(set.piece().description().format(), Words.ENGLISH);
    return Shopping.of(set, texts).boards().stream()
        .map(board -> board.stock() + ": " + board.boughtAs())
        .toList();
  }
}
