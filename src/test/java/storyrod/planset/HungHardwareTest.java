package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Planner;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.drawing.AllProjects;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.words.Words;

/** What hangs doors and holds tops is told, and counted, where it is screwed on. */
class HungHardwareTest {
  private static final String CUPS =
      """
      project: Case with a door
      units: mm
      stock:
        ash: {kind: solid, species: "ash, white", thickness: 20}
      items:
        hinge: {kind: concealed-hinge, cup-diameter: 35, cup-depth: 13, cup-edge: 4}
      parts:
        door: {stock: ash, x: 0 to 300, y: 0 to 20, z: 0 to 700, grain: z}
        side: {stock: ash, x: 0 to 20, y: 20 to 300, z: 0 to 700, grain: z}
        back: {stock: ash, x: 20 to 300, y: 280 to 300, z: 0 to 700, grain: z}
      joints:
        - butt: {end: back.left, to: side, glue: yes}
      cuts:
        - holes: {in: door.back, at: {x: 21.5, z: 100}, along: z, step: 500, count: 2, diameter: 35, depth: 13, for: hinge}
      hardware:
        - {item: hinge, count: 2, parts: [door, side]}
      """;

  private static final PlanSet SIDEBOARD = AllProjects.named("sideboard");
  private static List<StepText> sideboard;
  private static List<StepText> table;

  @BeforeAll
  static void write() throws IOException {
    sideboard = StepWordsTest.steps("sideboard");
    table = StepWordsTest.steps("dining-table");
  }

  private static StepText step(List<StepText> steps, String start) {
    return steps.stream()
        .filter(each -> each.title().startsWith(start))
        .findFirst()
        .orElseThrow(() -> new AssertionError(start));
  }

  private static void told(StepText step, String words) {
    assertTrue(
        step.sentences().stream().anyMatch(each -> each.contains(words)),
        () -> words + " in " + step);
  }

  private static List<Integer> counts(String operation, String item) {
    return SIDEBOARD.build().steps().stream()
        .filter(each -> each.operations().stream().anyMatch(o -> o.name().equals(operation)))
        .map(Step::hardware)
        .flatMap(List::stream)
        .filter(each -> each.item().equals(item))
        .map(each -> each.count())
        .toList();
  }

  /** Four hinges with six screws each: three in each leaf. */
  @Test
  void screwsOfEachLeafAreCountedWhereTheyGoIn() {
    assertEquals(List.of(12), counts("mount door-hinge", "hinge-screw"));
    assertEquals(List.of(4), counts("mount door-hinge", "door-hinge"));
    assertEquals(List.of(12), counts("fit left-door", "hinge-screw"));
    assertEquals(List.of(), counts("fit left-door.left-stile", "hinge-screw"));
  }

  @Test
  void hingesAreLetInOnTrialAndTheSecondLeafIsScrewedOnWhenTheDoorHangs() {
    StepText trial = step(sideboard, "Fit the hinges");
    told(trial, "mark round one leaf with a knife on the door's edge");
    told(trial, "mark the other leaf on the case");
    told(step(sideboard, "Put the hinges back"), "those of the other leaf go in when the door is");
    told(step(sideboard, "Hang the left door"), "drive one screw into the second leaf of each");
  }

  @Test
  void catchIsSetAndItsStrikePrintedWithTheDoorShut() {
    StepText catches = step(sideboard, "Mount the catches");
    assertTrue(
        catches.sentences().getFirst().startsWith("Screw the catch to the two middle stiles"));
    told(
        catches,
        "Set the strike on the magnet and chalk its back. Close each door until its gap is");
    told(catches, "Screw the strike to the two door stiles (AA) where it has printed.");
    told(catches, "3 in from the upper edge of the door to their middle");
    told(catches, "shift the strike until it closes without force");
  }

  /** Where the step says that catches go, the schedule does too. */
  @Test
  void theScheduleNamesDoorsAndFrameForCatches() {
    HardwareList.Row row =
        HardwareList.whole(SIDEBOARD, Texts.of(SIDEBOARD.piece())).rows().stream()
            .filter(each -> each.item().startsWith("Magnetic catch"))
            .findFirst()
            .orElseThrow();
    assertEquals("K, AA", row.parts());
    assertEquals(2, row.count());
  }

  /** The cups lie 21.5 from the hinged edge: half of 35, and 4 of wood. */
  @Test
  void cupsAreBoredAgainstAFence() {
    Diagnostics diagnostics = new Diagnostics();
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), List.of("fit"));
    Piece piece =
        new DescriptionReader(words)
            .read(new SourceText("test.yaml", CUPS), diagnostics)
            .flatMap(description -> PieceBuilder.build(description, diagnostics))
            .orElseThrow(() -> new AssertionError(diagnostics.sorted()));
    BuildPlan plan = Planner.plan(piece, diagnostics).orElseThrow();
    StepWriter writer = new StepWriter(piece, Words.ENGLISH, new Templates(), plan);
    StepText cups = step(plan.steps().stream().map(writer::write).toList(), "Drill the hinge cups");
    told(cups, "Fit the 35 mm Forstner bit with the stop at 13 mm.");
    told(cups, "the middles of the cups lie 21.5 mm from the left edge");
  }

  /** Five along each long side, two at each end: 14. */
  @Test
  void fastenersOfATopAreSharedOutAmongItsRails() {
    StepText top = step(table, "Fasten the top");
    told(
        top,
        "Hook the 14 top fasteners into the grooves on the inside of the rails, five in each of the"
            + " two long aprons (C) and two in each of the two end aprons (B), evenly spread.");
    told(top, "On rails that run along the grain of the top");
  }
}
