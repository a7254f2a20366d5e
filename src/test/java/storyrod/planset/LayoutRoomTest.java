package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.cli.PrintedProjects;
import storyrod.drawing.AllProjects;
import storyrod.drawing.Drawing;
import storyrod.measure.Units;
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
        project ->
            assertUnshrunk(
                project.set(),
                Paper.usualFor(project.set().piece().description().printed().unit())));
  }

  /** In both units a fence is long, but its row needs no second line where it has room. */
  @TestFactory
  Stream<DynamicTest> noSheetIsShrunkInBothUnits() {
    return Stream.of("bookcase", "sideboard", "window-bench")
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name,
                    () -> {
                      PrintedProjects both = PrintedProjects.named(name, Units.BOTH);
                      assertUnshrunk(both.drawn(both.usualPaper(), "publish"), both.usualPaper());
                    }));
  }

  private static void assertUnshrunk(PlanSet set, Paper paper) {
    Texts texts = new Texts(set.piece().description().printed(), Words.ENGLISH);
    Layouts.of(set, texts, paper).stocks().stream()
        .flatMap(stock -> stock.sheets().stream())
        .filter(sheet -> !sheet.bar())
        .forEach(sheet -> assertTrue(sheet.drawing().scale().isPresent(), sheet.drawing().name()));
  }

  /** Where the cells of a row need more than it has, a second line is counted. */
  @Test
  void aRowWithoutRoomCountsASecondLine() {
    Texts texts =
        new Texts(AllProjects.named("bookcase").piece().description().printed(), Words.ENGLISH);
    List<List<Layouts.Cut>> cuts =
        List.of(
            List.of(
                new Layouts.Cut(12, "piece 11", "across", "35 1/16 [890.6]", "piece 12, offcut")));
    CutTable wide = new CutTable(cuts, texts, 190);
    CutTable narrow = new CutTable(cuts, texts, 130);
    assertTrue(wide.areInOneLine());
    assertFalse(narrow.areInOneLine());
    assertTrue(narrow.heightMm() > wide.heightMm() + 3, "another line of 8.5 pt");
  }
}
