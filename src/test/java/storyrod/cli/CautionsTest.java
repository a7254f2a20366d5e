package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.drawing.AllProjects;

/** Cautions and tools by what a piece is made of, glued and finished with. */
class CautionsTest {
  private static final String SHELF =
      """
      project: Shelf
      units: mm
      stock:
        ply: {kind: sheet, species: birch plywood, thickness: 18, sheet: 2440 x 1220}
        ash: {kind: solid, species: "ash, white", thickness: 20}
      items:
        ring: {kind: other, title: Ring 60 mm}
      parts:
        side: {stock: ply, x: 0 to 18, y: 0 to 300, z: 0 to 600, grain: z}
        shelf: {stock: ash, x: side.right to 600, y: 0 to 150, z: 200 to 220, grain: x}
      joints:
        - dado: {end: shelf.left, into: side, depth: 6, glue: yes}
      cuts:
        - holes: {in: side.right, at: {y: 200, z: 500}, diameter: 60, through: yes, for: ring}
      finish: {product: water-based lacquer, tried-on: ash}
      """;

  private static List<Step> steps(String text) {
    Diagnostics found = new Diagnostics();
    var planned = Pipeline.plan(new SourceText("shelf.yaml", text), found);
    assertFalse(found.hasErrors(), () -> DiagnosticPrinter.print(found.sorted()));
    return planned.orElseThrow().build().steps();
  }

  /** The verbs of the steps that bear a caution. */
  private static Set<String> where(String caution, String text) {
    return steps(text).stream()
        .filter(step -> step.cautions().contains(caution))
        .map(step -> step.verb().word())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> tools(String verb, String text) {
    return steps(text).stream()
        .filter(step -> step.verb().word().equals(verb))
        .flatMap(step -> step.tools().stream())
        .toList();
  }

  @Test
  void anUsualShelfHasNoneOfTheSpecialOnes() {
    for (String caution :
        List.of("spalted-wood", "board-dust", "instant-glue", "wiring", "spraying", "oily-rags")) {
      assertEquals(Set.of(), where(caution, SHELF), caution);
    }
    assertEquals(Set.of("cut"), where("dado-set-across", SHELF));
  }

  @Test
  void spaltedWoodIsToldWhereverItMakesDust() {
    String spalted = SHELF.replace("thickness: 20}", "thickness: 20, spalted: yes}");
    assertEquals(Set.of("finish", "mill", "size"), where("spalted-wood", spalted));
  }

  @Test
  void gluedBoardsAreToldWhereverTheyMakeDust() {
    String board = SHELF.replace("birch plywood", "MDF");
    assertEquals(Set.of("cut", "drill", "finish", "size"), where("board-dust", board));
    assertEquals(
        where("board-dust", board),
        where("board-dust", SHELF.replace("birch plywood", "particleboard")));
  }

  @Test
  void instantGlueIsToldWhereTheMakerSpeaksOfIt() {
    String glued =
        SHELF
            + "build:\n  - stage: Shelf\n    say:\n      fit side: A drop of instant glue holds it while the other glue dries.\n";
    assertEquals(Set.of("fit"), where("instant-glue", glued));
  }

  @Test
  void anOpeningForACordLeavesTheWiringToAnElectrician() {
    String cord = SHELF.replace("Ring 60 mm", "Cable grommet 60 mm");
    assertEquals(Set.of("drill"), where("wiring", cord));
  }

  @Test
  void sprayingHasItsOwnCautionAndTools() {
    String sprayed = SHELF.replace("{product:", "{how: sprayed, product:");
    assertEquals(Set.of("finish", "test"), where("spraying", sprayed));
    assertEquals(List.of("sander", "respirator", "spray-gun"), tools("finish", sprayed));
  }

  @Test
  void brushAndClothGoByHowItIsPutOn() {
    assertEquals(
        List.of("sander", "respirator", "finish-brush", "lint-free-cloth"), tools("finish", SHELF));
    assertEquals(
        List.of("sander", "respirator", "lint-free-cloth"),
        tools("finish", SHELF.replace("{product:", "{how: wiped, product:")));
    assertEquals(
        List.of("sander", "respirator", "finish-brush"),
        tools("finish", SHELF.replace("{product:", "{how: brushed, product:")));
  }

  @Test
  void oilBringsTheRags() {
    assertEquals(
        Set.of("finish", "test"),
        where("oily-rags", SHELF.replace("water-based lacquer", "tung oil")));
  }

  /** Common practice: from 3/8 in down, a board in the planer needs a carrier. */
  @Test
  void thinBoardsAreToldAtThePlaner() {
    assertEquals(Set.of(), where("thin-stock", SHELF));
    String thin =
        SHELF.replace("thickness: 20", "thickness: 6").replace("200 to 220", "200 to 206");
    assertEquals(Set.of("mill"), where("thin-stock", thin));
  }

  /** Spirits wipe off the wax on which nothing sticks; a knife cuts the felt. */
  @Test
  void spiritsAndKnivesBringTheirCautions() {
    List<Step> box = AllProjects.named("sewing-box").build().steps();
    for (String caution : List.of("spirits", "knife")) {
      assertEquals(
          1, box.stream().filter(step -> step.cautions().contains(caution)).count(), caution);
    }
  }

  /** Slides that come back are screwed on in the standing case. */
  @Test
  void drillingInAStandingCaseIsCautioned() {
    List<Step> drilled =
        AllProjects.named("sideboard").build().steps().stream()
            .filter(step -> step.verb() == Verb.MOUNT && step.tools().contains("drill"))
            .toList();
    assertFalse(drilled.isEmpty());
    drilled.forEach(
        step -> assertTrue(step.cautions().contains("drilling-in-place"), step::toString));
  }

  /** A top that is screwed on from inside or below is drilled upwards, face under the drill. */
  @Test
  void drillingUpwardsIsCautioned() {
    for (String project :
        List.of("sideboard", "nightstand", "window-bench", "dining-table", "bookcase")) {
      Step topped =
          AllProjects.named(project).build().steps().stream()
              .filter(step -> step.verb() == Verb.FIT && bringsTop(step))
              .reduce((first, last) -> last)
              .orElseThrow();
      assertTrue(topped.cautions().contains("drilling-in-place"), () -> project + topped);
    }
  }

  private static boolean bringsTop(Step step) {
    return step.newParts().stream().anyMatch(part -> part.matches("top(\\..*)?"));
  }

  /** What lies on its back is not drilled over the head. */
  @Test
  void drillingOnTheBenchIsNot() {
    for (Step step : AllProjects.named("sideboard").build().steps()) {
      if (step.verb() == Verb.FIT && !bringsTop(step)) {
        assertFalse(step.cautions().contains("drilling-in-place"), step::toString);
      }
    }
  }
}
