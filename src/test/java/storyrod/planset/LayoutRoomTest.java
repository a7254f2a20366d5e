package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.drawing.AllProjects;
import storyrod.drawing.Drawing;
import storyrod.words.Words;

/** Sheets are drawn as large as the tables of their cuts leave room for. */
class LayoutRoomTest {
  /** Sheets of 60 x 60 in with nine and eight cuts: 5 in high, where 3 3/4 in were before. */
  @Test
  void aSheetOfFewCutsFillsItsPage() {
    PlanSet bench = AllProjects.named("window-bench");
    for (String stock : List.of("ply-12", "ply-thin")) {
      List<Drawing> sheets = bench.drawings().layouts().get(stock);
      assertEquals(1, sheets.size());
      assertEquals("1:12", sheets.getFirst().scale().orElseThrow().toString());
    }
  }

  /** Below the title of the layouts there is less room. */
  @Test
  void theFirstSheetLeavesRoomForTheTitle() {
    PlanSet bench = AllProjects.named("window-bench");
    Drawing first = bench.drawings().layouts().get("ply").getFirst();
    assertTrue(first.heightMm() < 0.57 * Paper.LETTER.textHeightMm());
  }

  /** What is shrunk to fit has no scale any more. */
  @TestFactory
  List<DynamicTest> noSheetIsShrunk() {
    return AllProjects.each(
        project -> {
          Texts texts = new Texts(project.set().piece().description().printed(), Words.ENGLISH);
          Paper paper = Paper.usualFor(texts.format().unit());
          Layouts.of(project.set(), texts, paper).stocks().stream()
              .flatMap(stock -> stock.sheets().stream())
              .filter(sheet -> !sheet.bar())
              .forEach(
                  sheet -> assertTrue(sheet.drawing().scale().isPresent(), sheet.drawing().name()));
        });
  }
}
