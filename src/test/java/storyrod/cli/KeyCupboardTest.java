package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Planner;
import storyrod.check.Checks;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/** A screwed-on back that comes last, and a solid panel that floats in a door. */
class KeyCupboardTest {
  private static final String CUPBOARD =
      Shell.read(Shell.PROJECTS.resolve("key-cupboard/project.yaml"));

  private static List<String> work(String text) {
    Diagnostics found = new Diagnostics();
    Piece piece =
        PieceBuilder.build(
                Pipeline.reader().read(new SourceText("key.yaml", text), found).orElseThrow(),
                found)
            .orElseThrow();
    Checks.run(piece, found);
    BuildPlan plan = Planner.plan(piece, found).orElseThrow();
    assertEquals(List.of(), found.sorted().stream().map(Diagnostic::code).toList());
    return plan.steps().stream().flatMap(KeyCupboardTest::operations).toList();
  }

  private static Stream<String> operations(Step step) {
    return step.operations().stream().map(operation -> operation.name());
  }

  private static void inOrder(List<String> work, String... names) {
    List<Integer> places = Stream.of(names).map(work::indexOf).toList();
    assertTrue(!places.contains(-1), work.toString());
    assertEquals(places.stream().sorted().toList(), places, work.toString());
  }

  @Test
  void theScrewedBackGoesOnWhenTheInsideIsFinishedAndItsHardwareIsOn() {
    inOrder(
        work(CUPBOARD),
        "fit top",
        "trial-fit hinge",
        "finish piece",
        "mount hinge",
        "fit back",
        "fit door");
  }

  @Test
  void aNailedBackStaysOnAndIsFinishedWithTheCase() {
    String nailed =
        CUPBOARD
            .replace("screws: {through: back", "brads: {through: back")
            .replace("screw: back-screw", "brad: back-brad")
            .replace(
                "back-screw: {kind: wood-screw, title: Wood screw 3.5 x 20 mm, length: 20,"
                    + " diameter: 3.5}",
                "back-brad: {kind: brad, length: 25, diameter: 1.2}");
    inOrder(work(nailed), "fit top", "fit back", "trial-fit hinge", "finish piece");
  }

  @Test
  void withoutFinishTheBackStillWaitsForTheHinges() {
    String bare = CUPBOARD.replaceAll("(?m)^finish:.*$", "");
    inOrder(work(bare), "fit top", "mount hinge", "fit back", "fit door");
  }

  @Test
  void theSolidPanelIsGluedUpRestsAndIsFinishedBeforeItsFrameCloses() {
    inOrder(
        work(CUPBOARD),
        "mill door.panel",
        "cut door.left-stile",
        "size door.panel",
        "mark door.panel",
        "sand door.panel",
        "dry-fit door",
        "pre-finish door.panel",
        "fit door.panel",
        "fit door.right-stile",
        "fit door");
  }
}
