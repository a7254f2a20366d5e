package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import storyrod.build.PreFinished;
import storyrod.cli.Pipeline;
import storyrod.description.Diagnostics;
import storyrod.description.FinishEntry;
import storyrod.description.SourceText;
import storyrod.drawing.AllProjects;
import storyrod.wood.Cures;
import storyrod.words.Words;

/** The finishing schedule and what is masked. */
class FinishDataTest {
  private static final String BOARD =
      """
      project: Board
      units: inch
      stock:
        oak: {kind: solid, species: "oak, white", thickness: 3/4}
      parts:
        board: {stock: oak, x: 0 to 14, y: 0 to 9, z: 0 to 3/4, grain: x}
      finish: {product: oil-based varnish, kind: oil-varnish, coats: 2%s}
      """;

  private static FinishData finish(PlanSet set) {
    return finish(set, Printing.usual(Words.ENGLISH));
  }

  private static FinishData finish(PlanSet set, Printing printing) {
    Print print = Print.of(set.piece(), set.build(), printing);
    return FinishData.of(set, new Notes(List.of(), List.of()), print).orElseThrow();
  }

  private static Map<String, String> rows(String more) {
    SourceText source = new SourceText("project.yaml", BOARD.formatted(more));
    PlanSet set = Pipeline.planSet(source, new Diagnostics()).orElseThrow();
    Map<String, String> rows = new TreeMap<>();
    finish(set).rows().forEach(row -> rows.put(row.label(), row.value()));
    return rows;
  }

  /** Its screws are in when it is finished, and their heads are seen. */
  @Test
  void aPieceWithScrewsInItIsNotSaidToHaveNoHardwareYet() {
    PlanSet stool = AllProjects.named("step-stool");
    assertTrue(finish(stool).masks().isEmpty());
    assertTrue(stool.build().steps().stream().anyMatch(step -> !step.hardware().isEmpty()));
    String told = Words.ENGLISH.say("finish.mask.none");
    assertFalse(told.contains("no hardware"), told);
  }

  @Test
  void theLabelsOwnFiguresComeFirst() {
    Map<String, String> rows = rows(", sheen: satin, cure-days: 12, sand-to: 220");
    assertEquals("satin", rows.get("Sheen"));
    assertEquals("after 12 days", rows.get("Fully hardened"));
    assertEquals("varnish on oil base", rows.get("Sort of product"));
    assertTrue(rows.get("Sand").contains("220"), rows.toString());
  }

  @Test
  void whatTheLabelWasNotAskedIsARangeWithItsWarning() {
    Map<String, String> rows = rows("");
    assertEquals(
        "after 7 to 30 days: a range of common practice, the label rules",
        rows.get("Fully hardened"));
    assertEquals("to be settled on the test piece", rows.get("Sheen"));
  }

  @Test
  void everySortOfFinishHasWordsAndEveryCureIsOfASort() {
    for (String kind : FinishEntry.KINDS) {
      assertTrue(Words.ENGLISH.has("finish.kind." + kind), kind);
    }
    for (String sheen : FinishEntry.SHEENS) {
      assertTrue(Words.ENGLISH.has("finish.sheen." + sheen), sheen);
    }
    for (Cures.Cure cure : Cures.all()) {
      assertTrue(FinishEntry.KINDS.contains(cure.kind()), cure.kind());
      assertTrue(cure.least() > 0 && cure.least() < cure.most(), cure.kind());
    }
  }

  /** No hand goes in between the two shelves, so their walls are finished before they are glued. */
  private static final String NARROW =
      """
      project: Pigeonhole
      units: mm
      stock:
        ply: {kind: sheet, species: birch plywood, thickness: 18, sheet: 2440 x 1220}
      parts:
        left: {stock: ply, x: 0 to 18, y: 0 to 280, z: 0 to 400, grain: z}
        right: {stock: ply, x: 300 to 318, y: 0 to 280, z: 0 to 400, grain: z}
        floor: {stock: ply, x: 18 to 300, y: 0 to 280, z: 100 to 118, grain: x}
        shelf: {stock: ply, x: 18 to 300, y: 0 to 280, z: 178 to 196, grain: x}
        back: {stock: ply, x: 0 to 318, y: 280 to 298, z: 0 to 400, grain: z}
      joints:
        - dado: {end: floor.left, into: left, depth: 6, glue: yes}
        - dado: {end: floor.right, into: right, depth: 6, glue: yes}
        - dado: {end: shelf.left, into: left, depth: 6, glue: yes}
        - dado: {end: shelf.right, into: right, depth: 6, glue: yes}
        - butt: {end: back.front, to: left, glue: yes}
      finish: {product: varnish, coats: 2, dry-hours: 24, tried-on: birch plywood}
      """;

  @Test
  void everyJointThatNeedsBareWoodIsMasked() {
    Diagnostics diagnostics = new Diagnostics();
    PlanSet set =
        Pipeline.planSet(new SourceText("project.yaml", NARROW), diagnostics)
            .orElseThrow(() -> new AssertionError(diagnostics.sorted()));
    PreFinished early = new PreFinished(set.piece());
    assertEquals(2, early.masked("left").stream().filter(j -> j.type().equals("dado")).count());
    String left = set.piece().part("left").mark();
    String shelf = set.piece().part("shelf").mark();
    assertTrue(
        finish(set).masks().stream()
            .anyMatch(
                mask ->
                    List.of(mask.on().split(", ")).contains(left)
                        && mask.what().contains("where " + shelf + " is glued on, 18 × 280 mm")),
        finish(set).masks().toString());
  }

  /** The step and the table tell the same: what slides, and the hole for the knob. */
  @Test
  void whatSlidesIsKeptBareInTheTableToo() throws java.io.IOException {
    List<String> masks =
        finish(AllProjects.named("sewing-box")).masks().stream().map(Masks.Mask::on).toList();
    assertEquals(List.of("T", "T", "H, J, K"), masks);
    List<String> finishing =
        StepWordsTest.steps("sewing-box").stream()
            .filter(step -> step.title().equals("Finish the piece"))
            .flatMap(step -> step.sentences().stream())
            .toList();
    assertTrue(
        finishing.stream().anyMatch(each -> each.contains("lists under “What to keep bare”")),
        finishing::toString);
  }

  /** What the maker wrote in English is no English in another language, as far as it is woods. */
  @Test
  void woodsOfATrialAreNamedInTheLanguage() {
    Words german = Words.load("de");
    String told = TriedWoods.told("white oak, oak plywood and birch plywood offcuts", german);
    assertTrue(told.contains(": Weißeiche, Eichensperrholz, Birkensperrholz."), told);
    String own = TriedWoods.told("an old door", german);
    assertTrue(own.contains("„an old door“"), own);
    assertTrue(TriedWoods.told("white oak", Words.ENGLISH).endsWith("on white oak."));
  }

  /** What the test piece has shown needs no name and date in the record; a buyer's is another. */
  @Test
  void theVerdictOnTheLastTestPieceStandsInTheRecordOnly() {
    PlanSet stool = AllProjects.named("step-stool");
    assertEquals("", finish(stool).settled());
    Printing usual = Printing.usual(Words.ENGLISH);
    Edition record = Edition.named("record", usual.templates()).orElseThrow();
    Printing kept =
        new Printing(usual.templates(), usual.words(), record, usual.paper(), usual.choice());
    assertEquals(
        "Looked at on 2026-11-15: white ash, hard wax oil, 3 coats. Even and dry after a night. It"
            + " goes on.",
        finish(stool, kept).settled());
  }
}
