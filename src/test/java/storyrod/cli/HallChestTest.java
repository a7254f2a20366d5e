package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.measure.Length;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.RoughPart;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A chest whose drawer front is sawn out of its front board, from description to plan set. */
class HallChestTest {
  private static final Path PROJECT = Shell.PROJECTS.resolve("hall-chest");

  @TempDir static Path folder;
  private static Map<String, byte[]> files;
  private static JsonNode plan;

  @BeforeAll
  static void build() {
    files = Shell.built(PROJECT, folder);
    plan = JsonMapper.shared().readTree(files.get("plan.json"));
  }

  private static Pipeline.Planned planned(String text) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<Pipeline.Planned> planned =
        Pipeline.plan(new SourceText("project.yaml", text), diagnostics);
    return planned.orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
  }

  private static String text() {
    return Shell.read(PROJECT.resolve("project.yaml"));
  }

  /** The chest with its front of plywood and the drawer front routed out of it. */
  private static String routed() {
    return text()
        .replaceAll("(  front:\n +stock: )ash", "$1ply")
        .replaceAll("(title: Drawer front\n +stock: )ash", "$1ply")
        .replace("0 to ash.thickness", "0 to ply.thickness")
        .replace("kerf: 3", "kerf: 6")
        .replace("gap: 3", "gap: 6")
        .replace("method: saw, kerf: kerf, gap: gap", "method: router, cutter: kerf");
  }

  @Test
  void cutListSaysWhichPartsBelongTogether() {
    List<Map<String, String>> rows = Rows.of(files.get("cut-list.csv"));
    Map<String, String> front = row(rows, "Front");
    Map<String, String> kept = row(rows, "Drawer front");
    assertEquals(front.get("mark"), kept.get("blank_of"));
    assertEquals("cut out of " + front.get("mark"), kept.get("note"));
    assertEquals("", kept.get("rough_width"));
    assertEquals("294", kept.get("length"));
    assertEquals("114", kept.get("width"));
    assertEquals("400", front.get("width"));
    assertEquals(
        "with " + kept.get("mark") + "; blank 700 × 406 before the rips", front.get("note"));
  }

  private static Map<String, String> row(List<Map<String, String>> rows, String part) {
    return rows.stream().filter(row -> row.get("part").equals(part)).findFirst().orElseThrow();
  }

  @Test
  void roughBoardIsThatOfTheWiderBlankAndIsBoughtOnce() {
    Pipeline.Planned chest = planned(text());
    List<RoughPart> ash =
        chest.stock().rough().stream()
            .filter(each -> chest.piece().mark(each.mark()).shown().stock().name().equals("ash"))
            .toList();
    assertEquals(1, ash.size());
    Length extra = chest.piece().description().shop().extraWidth();
    assertEquals(Length.mm(406).plus(extra), ash.getFirst().width());
  }

  @Test
  void layoutsPlaceOneBlankForBoardAndKeptPiece() {
    Pipeline.Planned chest = planned(routed());
    List<Placed> placed =
        chest.stock().layouts().stream()
            .flatMap(layout -> layout.sheets().stream())
            .flatMap(sheet -> sheet.placed().stream())
            .toList();
    assertTrue(placed.stream().anyMatch(each -> each.part().equals("front")));
    assertTrue(placed.stream().noneMatch(each -> each.part().equals("drawer.face")));
    assertEquals(chest.piece().parts().size() - 1, placed.size());
  }

  @Test
  void sawnSheetLiesOnItsLayoutTwoKerfsWider() {
    String sawn =
        routed()
            .replace("kerf: 6", "kerf: 3")
            .replace("gap: 6", "gap: 3")
            .replace("method: router, cutter: kerf", "method: saw, kerf: kerf, gap: gap");
    Placed front =
        planned(sawn).stock().layouts().stream()
            .flatMap(layout -> layout.sheets().stream())
            .flatMap(sheet -> sheet.placed().stream())
            .filter(each -> each.part().equals("front"))
            .findFirst()
            .orElseThrow();
    assertEquals(Length.mm(700), front.area().length());
    assertEquals(Length.mm(406), front.area().width());
  }

  private static int step(Pipeline.Planned planned, String operation) {
    return planned.build().steps().stream()
        .filter(each -> each.operations().stream().anyMatch(o -> o.name().equals(operation)))
        .mapToInt(Step::number)
        .max()
        .orElseThrow(() -> new AssertionError("no " + operation));
  }

  private static void assertInOrder(Pipeline.Planned planned, String... operations) {
    List<Integer> steps = new ArrayList<>();
    List.of(operations).forEach(each -> steps.add(step(planned, each)));
    assertEquals(
        steps.stream().sorted().distinct().toList(), steps, () -> "not in order: " + steps);
  }

  @Test
  void blankIsCutApartGluedTogetherAndSizedBeforeOtherJoints() {
    Pipeline.Planned chest = planned(text());
    assertInOrder(
        chest,
        "mill front",
        "blank front",
        "keep front",
        "rejoin front",
        "size front",
        "fit front");
    assertInOrder(chest, "keep front", "size drawer.face", "drill drawer.face", "fit drawer.face");
    int glued = step(chest, "rejoin front");
    assertEquals(24 * 60, chest.build().steps().get(glued - 1).waitMinutes());
  }

  @Test
  void routedBoardIsSizedFirstAndNothingIsGlued() {
    Pipeline.Planned chest = planned(routed());
    assertInOrder(chest, "size front", "keep front", "drill drawer.face", "fit drawer.face");
    List<String> operations =
        chest.build().steps().stream()
            .flatMap(each -> each.operations().stream())
            .map(each -> each.name())
            .toList();
    assertFalse(operations.contains("rejoin front"), operations::toString);
    assertFalse(operations.contains("size drawer.face"), operations::toString);
  }

  @Test
  void makersOrderThatSizesTheBoardBeforeItIsCutApartIsABreach() {
    Diagnostics diagnostics = new Diagnostics();
    String own = "\nbuild:\n  - stage: Mine\n    order: [size front, keep front]\n";
    Pipeline.plan(new SourceText("project.yaml", text() + own), diagnostics);
    assertEquals(
        List.of("order-breaks-rule"),
        diagnostics.sorted().stream()
            .filter(each -> each.isError())
            .map(each -> each.code())
            .toList(),
        diagnostics.sorted()::toString);
  }

  @Test
  void makersOrderOfAllPartsLeavesRoomForTheCuttingApart() {
    String all = "\nbuild:\n  - stage: Mine\n    order: [mill all, size all, cut all, drill all]\n";
    Pipeline.Planned chest = planned(text() + all);
    assertInOrder(chest, "mill front", "blank front", "keep front", "rejoin front", "size front");
    String each =
        "\nbuild:\n  - stage: Mine\n    order: [mill all, blank all, keep all, rejoin all, size all]\n";
    assertInOrder(planned(text() + each), "keep front", "rejoin front", "size front");
  }

  @Test
  void planJsonHoldsEveryNumberOfTheCut() {
    JsonNode kept = plan.get("kept_cutouts").get(0);
    assertEquals("saw", kept.get("method").asString());
    assertEquals(406_000, kept.get("blank_width_um").asInt());
    assertEquals(700_000, kept.get("blank_length_um").asInt());
    assertEquals("[140000,120000,140000]", kept.get("strips_um").toString());
    JsonNode part = kept.get("kept").get(0);
    assertEquals("drawer.face", part.get("part").asString());
    assertEquals(294_000, part.get("length_um").asInt());
    assertEquals(120_000, part.get("width_off_the_tool_um").asInt());
    assertEquals(114_000, part.get("width_um").asInt());
    assertEquals(4, kept.get("saw_cuts").size());
  }

  @Test
  void stepsTellTheSizesInTheOrderOfTheWork() throws IOException {
    String pages;
    try (PDDocument document = Loader.loadPDF(files.get("plan-set.pdf"))) {
      pages = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
    List.of(
            "to a blank of 700 × 406 mm",
            "strips of 140 mm (1) and 120 mm (2) come off",
            "pieces of 200 mm (3) and 294 mm (4) come off",
            "comes off the saw 294 × 120 mm",
            "from 294 × 120 mm to 294 × 114 mm",
            "the strips together must give 400 mm",
            "in the blank of A")
        .forEach(said -> assertTrue(pages.contains(said), said));
  }

  @Test
  void blankHasADrawingOfItsOwn() {
    String svg = new String(files.get("drawings/blank-A.svg"), StandardCharsets.UTF_8);
    List.of(">406<", ">140<", ">120<", ">294<", "294 × 120 kept", "kerf 3", ">4<")
        .forEach(text -> assertTrue(svg.contains(text), text));
  }
}
