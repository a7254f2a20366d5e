package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.Edition;
import storyrod.planset.PlanSet;
import storyrod.planset.Printing;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.words.Words;

/**
 * A buyer has none of the boards that lie in the maker's shop; the maker's own editions use them.
 */
class BuyersStockTest {
  private static final Path TABLE = Path.of("projects", "dining-table", "project.yaml");

  private final Diagnostics diagnostics = new Diagnostics();

  private Pipeline.Planned planned(String text) {
    return Pipeline.plan(new SourceText("table.yaml", text), diagnostics).orElseThrow();
  }

  private static String table() throws IOException {
    return Files.readString(TABLE);
  }

  private static Printing printing(String edition) {
    Printing usual = Printing.usual(Words.ENGLISH);
    return new Printing(
        usual.templates(),
        usual.words(),
        Edition.named(edition, usual.templates()).orElseThrow(),
        Optional.empty(),
        usual.choice());
  }

  private PlanSet of(Pipeline.Planned planned, String edition) {
    return new PlanSets(planned, diagnostics).of(printing(edition));
  }

  private static long fromHand(PlanSet set) {
    return set.stock().layouts().stream()
        .flatMap(plan -> plan.sheets().stream())
        .map(SheetLayout::onHand)
        .flatMap(Optional::stream)
        .count();
  }

  @ParameterizedTest
  @CsvSource({"publish, 0", "preview, 0", "helper, 2", "record, 2"})
  void onlyTheMakersEditionsSawTheMakersBoards(String edition, int boards) throws IOException {
    PlanSet set = of(planned(table()), edition);
    assertEquals(boards, fromHand(set), edition);
    assertEquals(
        boards == 0, set.stock().boards().stream().allMatch(need -> need.onHand().signum() == 0));
  }

  /** What is bought is what would be, had the description said nothing of a pile. */
  @Test
  void aBuyerBuysAsIfThereWereNoPile() throws IOException {
    String text = table();
    int from = text.indexOf("on-hand:");
    String without = text.substring(0, from) + text.substring(text.indexOf("\nitems:", from));
    PlanSet expected = of(planned(without), "publish");
    PlanSet set = of(planned(text), "publish");
    assertEquals(
        expected.stock().boards().stream().map(need -> need.toBuy()).toList(),
        set.stock().boards().stream().map(need -> need.toBuy()).toList());
    assertEquals(expected.drawings().layouts(), set.drawings().layouts());
  }

  @Test
  void noPageOfTheEditionToSellTellsOfThePile() throws IOException {
    PlanSets sets = new PlanSets(planned(table()), diagnostics);
    assertFalse(pages(sets, "publish").contains("on hand"));
    assertTrue(pages(sets, "record").contains("on hand"));
  }

  private static String pages(PlanSets sets, String edition) throws IOException {
    Printing printing = printing(edition);
    try (PDDocument pdf = Loader.loadPDF(sets.writer(printing).pdf(sets.of(printing)))) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  /** That a pile runs out is no finding for who has none. */
  @Test
  void aBuyerIsNotToldThatThePileRunsOut() throws IOException {
    Pipeline.Planned planned = planned(table().replace("boards: 84 x 6, ", ""));
    assertTrue(codes(of(planned, "helper")).contains("boards-run-out"));
    assertFalse(codes(of(planned, "publish")).contains("boards-run-out"));
  }

  private static List<String> codes(PlanSet set) {
    return set.findings().stream().map(each -> each.code()).toList();
  }

  @Test
  void whereNothingIsOnHandBothReadersShareOnePlan() throws IOException {
    Path bench = Path.of("projects", "window-bench", "project.yaml");
    Pipeline.Planned planned = planned(Files.readString(bench));
    assertSame(planned, planned.asBought());
  }

  /** A wide sheet that is on hand and cannot be bought still gives its part. */
  @Test
  void whatOnlyThePileGivesStaysOnThePile() {
    Pipeline.Planned planned =
        planned(
            """
            project: Wide board
            units: mm
            stock:
              ply: {kind: sheet, species: birch plywood, thickness: 18, sheet: 800 x 400}
            on-hand:
              rest: {stock: ply, length: 1200, width: 600}
            parts:
              board: {stock: ply, x: 0 to 1000, y: 0 to 500, z: 0 to ply.thickness, grain: x}
            """);
    assertEquals(1, fromHand(of(planned, "publish")));
  }
}
