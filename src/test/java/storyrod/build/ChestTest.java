package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.DescriptionReader;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.description.Vocabulary;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/** Six drawers in a carcase that is itself a sub-assembly, and a night table with a door. */
class ChestTest {
  private static final List<String> DRAWERS =
      IntStream.rangeClosed(1, 6).mapToObj(n -> "carcase.drawer-" + n).toList();

  private static Piece piece(String project, String more) {
    Diagnostics diagnostics = new Diagnostics();
    Vocabulary words = new Vocabulary(JointTypes.words(), CutTypes.words(), Verb.words());
    return new DescriptionReader(words)
        .read(new SourceText(project, text(project) + more), diagnostics)
        .flatMap(description -> PieceBuilder.build(description, diagnostics))
        .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
  }

  private static String text(String project) {
    try {
      return Files.readString(Path.of("src/test/resources/projects", project, "project.yaml"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static BuildPlan plan(Piece piece) {
    Diagnostics diagnostics = new Diagnostics();
    return Planner.plan(piece, diagnostics)
        .orElseThrow(() -> new AssertionError(diagnostics.sorted().toString()));
  }

  private static final Piece CHEST = piece("chest", "");
  private static final BuildPlan PLAN = plan(CHEST);

  private static int step(BuildPlan plan, String operation) {
    return plan.steps().stream()
        .filter(step -> step.operations().stream().anyMatch(op -> op.name().equals(operation)))
        .mapToInt(Step::number)
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + operation));
  }

  @Test
  void theCarcaseIsTogetherBeforeItIsFittedAndItsDrawersHangAfterTheFinish() {
    int fitted = step(PLAN, "fit carcase");
    for (String part : List.of("left-side", "bottom", "partition", "front-rail", "back")) {
      assertTrue(step(PLAN, "fit carcase." + part) < fitted, part);
    }
    int finished = step(PLAN, "finish piece");
    assertTrue(fitted < finished);
    for (String drawer : DRAWERS) {
      assertTrue(step(PLAN, "fit " + drawer + ".panel") < finished, drawer);
      assertTrue(finished < step(PLAN, "mount slide"), drawer);
      assertTrue(step(PLAN, "mount slide") < step(PLAN, "fit " + drawer), drawer);
      assertTrue(step(PLAN, "fit " + drawer) < step(PLAN, "fit " + drawer + ".face"), drawer);
    }
  }

  @Test
  void drawersAreUnitsOfThePieceAndNotOfTheCarcase() {
    Map<String, List<Unit>> levels = Levels.of(CHEST);
    List<String> inPiece = levels.get(Unit.PIECE).stream().map(Unit::name).toList();
    assertTrue(inPiece.containsAll(DRAWERS), inPiece.toString());
    assertTrue(inPiece.contains("carcase.drawer-1.face"));
    assertTrue(levels.get("carcase").stream().noneMatch(unit -> DRAWERS.contains(unit.name())));
    Unit carcase =
        levels.get(Unit.PIECE).stream().filter(u -> u.name().equals("carcase")).findFirst().get();
    assertEquals(7, carcase.parts().size());
  }

  @Test
  void everyPartIsInExactlyOneUnitOfEachWayOfLooking() {
    for (Map<String, List<Unit>> levels : List.of(Levels.of(CHEST), Levels.withFronts(CHEST))) {
      List<String> inPiece =
          levels.get(Nesting.PIECE).stream().flatMap(u -> u.partNames().stream()).sorted().toList();
      assertEquals(CHEST.parts().stream().map(part -> part.name()).sorted().toList(), inPiece);
    }
  }

  @Test
  void equalDrawersAreBuiltInTheSameSteps() {
    List<String> equal = List.of(DRAWERS.get(0), DRAWERS.get(1), DRAWERS.get(3), DRAWERS.get(4));
    for (String part : List.of("box-front", "left-side", "box-back", "panel", "right-side")) {
      assertEquals(
          1,
          equal.stream().map(each -> step(PLAN, "fit " + each + "." + part)).distinct().count(),
          part);
    }
    assertEquals(2, fits(Stream.of("face")).distinct().count());
    assertEquals(2, DRAWERS.stream().map(each -> step(PLAN, "fit " + each)).distinct().count());
  }

  private static Stream<Integer> fits(Stream<String> parts) {
    return parts.flatMap(
        part -> DRAWERS.stream().map(each -> step(PLAN, "fit " + each + "." + part)));
  }

  @Test
  void theStrapComesLast() {
    assertEquals(PLAN.steps().size(), step(PLAN, "mount strap"));
  }

  @Test
  void theMakersOwnOrderReachesIntoSubAssemblies() {
    String order =
        """
        build:
          - stage: Drawers
            order: [fit carcase.drawer-2, fit carcase.drawer-1, fit carcase.drawer-3]
            say:
              fit carcase.drawer-2: The middle one first.
        """;
    BuildPlan own = plan(piece("chest", order));
    int two = step(own, "fit carcase.drawer-2");
    List<String> drawers =
        own.steps().stream()
            .flatMap(step -> step.operations().stream())
            .map(Operation::name)
            .filter(name -> name.matches("fit carcase\\.drawer-[1-3]"))
            .toList();
    assertEquals(
        List.of("fit carcase.drawer-2", "fit carcase.drawer-1", "fit carcase.drawer-3"), drawers);
    assertEquals(List.of("The middle one first."), own.steps().get(two - 1).say());
  }

  @Test
  void aFrontBeforeItsDrawerIsABreachOfTheRule() {
    String order =
        """
        build:
          - stage: Drawers
            order: [fit carcase.drawer-2.face, fit carcase.drawer-2]
        """;
    Diagnostics diagnostics = new Diagnostics();
    assertTrue(Planner.plan(piece("chest", order), diagnostics).isEmpty());
    Diagnostic fault = diagnostics.sorted().getFirst();
    assertEquals("order-breaks-rule", fault.code());
    assertTrue(fault.message().contains("fit carcase.drawer-2"), fault.message());
  }

  @Test
  void aDoorIsBoredFirstThenHingedThenHungThenCaught() {
    BuildPlan plan = plan(piece("night-table", ""));
    List<Integer> order =
        Stream.of("drill door", "finish piece", "mount hinge", "fit door", "mount catch")
            .map(name -> step(plan, name))
            .toList();
    assertEquals(order.stream().sorted().toList(), order);
    assertTrue(step(plan, "fit shelf") < step(plan, "fit door"), "the door would be in the way");
    Step hang = plan.steps().get(step(plan, "fit door") - 1);
    assertTrue(hang.cautions().contains("hinges"), hang.cautions().toString());
  }
}
