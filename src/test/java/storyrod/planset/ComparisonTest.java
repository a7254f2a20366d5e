package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.description.Vocabulary;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.planset.Comparison.Plan;
import storyrod.planset.Comparison.Variant;
import storyrod.stock.StockPlanner;
import storyrod.words.Words;

class ComparisonTest {
  private static final SourceText NOWHERE = new SourceText("a.yaml", "");
  private static final Diagnostic WARNING =
      Diagnostic.warning("loose-part", Span.startOf(NOWHERE), "nothing holds shelf");
  private static final Diagnostic ERROR =
      Diagnostic.error("range", Span.startOf(NOWHERE), "this runs backwards");

  /** A board of 24 x 6 x 1 in is one board foot; oak boards cost 5 for one. */
  private static final String SOLID =
      """
      project: Board
      units: inch
      stock:
        oak: {kind: solid, species: oak, thickness: 1, price: 5 per board-foot, density: 700}
      parts:
        board: {stock: oak, x: 0 to 24, y: 0 to 6, z: 0 to oak.thickness, grain: x}
      shop: {extra-length: 0, extra-width: 0, waste-percent: 0}
      """;

  private static final String SHEETS =
      """
      project: Boards
      units: inch
      stock:
        ply: {kind: sheet, species: birch plywood, thickness: 1, sheet: 96 x 48, price: 90 per sheet, density: 700}
      parts:
        low: {stock: ply, x: 0 to 80, y: 0 to 40, z: 0 to ply.thickness, grain: x}
        high: {stock: ply, x: 0 to 80, y: 0 to 40, z: ply.thickness to 2 * ply.thickness, grain: x}
      joints:
        - butt: {end: high.bottom, to: low, glue: yes}
      """;

  @Test
  void eachVariantHasItsOwnFigures() {
    Comparison table = comparison(variant("solid", SOLID), variant("sheets", SHEETS));
    assertEquals(List.of("solid", "sheets"), table.variants());
    assertRow(table, "parts", "1", "2");
    assertRow(table, "sheets", "0", "2");
    assertRow(table, "board-feet", "1.0", "0.0");
    assertRow(table, "cost", "5.00", "180.00");
  }

  /** 144 in³ are 2359.737 cm³ (25.4 mm to the inch, ISO 31-1), at 700 kg/m³ 1.65 kg. */
  @Test
  void weightIsThatOfTheFinishedParts() {
    assertRow(comparison(variant("solid", SOLID)), "weight", "1.7");
  }

  @Test
  void workingAndWaitingTimeAreThoseOfTheSteps() {
    Variant sheets = variant("sheets", SHEETS);
    BuildPlan build = sheets.plan().orElseThrow().build();
    double work = build.steps().stream().mapToInt(BuildPlan.Step::minutes).sum() / 60.0;
    double wait = build.steps().stream().mapToInt(BuildPlan.Step::waitMinutes).sum() / 60.0;
    assertEquals(work, Double.parseDouble(cell(comparison(sheets), "working-hours")), 0.0501);
    assertEquals(wait, Double.parseDouble(cell(comparison(sheets), "waiting-hours")), 0.0501);
    assertTrue(work > 0 && wait > 0);
    int least = (int) Math.ceil(wait / 24);
    assertTrue(Integer.parseInt(cell(comparison(sheets), "days")) >= least);
  }

  @Test
  void unknownPriceOrDensityLeavesItsCellEmpty() {
    String text =
        SOLID
            .replace(", price: 5 per board-foot, density: 700", "")
            .replace("species: oak", "species: moon tree");
    Comparison table = comparison(variant("unknown", text));
    assertRow(table, "cost", "");
    assertRow(table, "weight", "");
    assertTrue(table.text().contains("Cost                     -\n"), table.text());
  }

  @Test
  void variantWithErrorsHasItsFindingsAndNothingElse() {
    Comparison table =
        comparison(
            variant("solid", SOLID),
            new Variant("broken", Optional.empty(), List.of(ERROR, WARNING, WARNING)));
    assertRow(table, "parts", "1", "");
    assertRow(table, "errors", "0", "1");
    assertRow(table, "warnings", "0", "2");
  }

  @Test
  void columnsOfTheTableAreAligned() {
    String text = comparison(variant("a-long-name", SOLID), variant("b", SHEETS)).text();
    List<String> lines = text.lines().toList();
    assertEquals(1, lines.stream().map(String::length).distinct().count(), text);
    assertTrue(lines.getFirst().endsWith("  a-long-name       b"), text);
  }

  @Test
  void spreadsheetHasARowForEachVariant() {
    List<String> lines = List.of(comparison(variant("solid", SOLID)).csv().split("\r\n"));
    assertTrue(lines.get(0).startsWith("variant,parts,sheets,board-feet,cost,weight,"));
    assertTrue(lines.get(1).startsWith("solid,1,0,1.0,5.00,1.7,"), lines.get(1));
    assertEquals(2, lines.size());
  }

  private static Comparison comparison(Variant... variants) {
    return Comparison.of(List.of(variants), Words.ENGLISH);
  }

  private static Variant variant(String name, String text) {
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
    Diagnostics diagnostics = new Diagnostics();
    Piece piece =
        new DescriptionReader(words)
            .read(new SourceText(name, text), diagnostics)
            .flatMap(description -> PieceBuilder.build(description, diagnostics))
            .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
    Plan plan =
        new Plan(
            piece,
            StockPlanner.plan(piece, diagnostics).orElseThrow(),
            Planner.plan(piece, diagnostics).orElseThrow());
    return new Variant(name, Optional.of(plan), List.of());
  }

  private static void assertRow(Comparison table, String key, String... cells) {
    assertEquals(List.of(cells), row(table, key).cells(), key);
  }

  private static String cell(Comparison table, String key) {
    return row(table, key).cells().getFirst();
  }

  private static Comparison.Row row(Comparison table, String key) {
    return table.rows().stream().filter(row -> row.key().equals(key)).findFirst().orElseThrow();
  }
}
