package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Planner;
import storyrod.build.Verb;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.piece.Cut;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;
import storyrod.piece.Pieces;
import storyrod.piece.Slanted;

/** Joints are cut while faces are square, then come tapers, then the glue (common practice). */
class TapersTest {
  private static BuildPlan plan(Piece piece) {
    return Planner.plan(piece, new Diagnostics()).orElseThrow();
  }

  private static BuildPlan project(String name) {
    Path file = Path.of("projects", name, "project.yaml");
    Diagnostics found = new Diagnostics();
    return plan(
        Pipeline.reader()
            .read(new SourceText(file.toString(), Shell.read(file)), found)
            .flatMap(read -> PieceBuilder.build(read, found))
            .orElseThrow());
  }

  private static boolean isTaper(Cut cut) {
    return cut instanceof Slanted.Slope slope && slope.kind() == Slanted.Slope.Kind.TAPER;
  }

  private static Stream<Operation> tapers(Step step) {
    return step.operations().stream()
        .filter(operation -> operation.verb() == Verb.CUT)
        .filter(operation -> operation.cuts().stream().anyMatch(TapersTest::isTaper));
  }

  /** What is done too late or too early by the tapers of one step. */
  private static List<String> breaches(BuildPlan plan, Step tapering) {
    List<String> parts = tapers(tapering).map(Operation::target).toList();
    Stream<String> late =
        plan.steps().stream()
            .filter(step -> step.number() > tapering.number())
            .flatMap(step -> step.operations().stream())
            .filter(each -> parts.contains(each.target()) && each.verb() == Verb.CUT)
            .filter(each -> each.cuts().stream().anyMatch(TapersTest::isJoint))
            .map(Operation::name);
    Stream<String> early =
        plan.steps().stream()
            .filter(step -> step.number() < tapering.number())
            .filter(step -> step.verb() == Verb.FIT)
            .flatMap(step -> step.newParts().stream())
            .filter(parts::contains);
    return Stream.concat(late, early).toList();
  }

  private static boolean isJoint(Cut cut) {
    return cut.takesIn() || cut instanceof Cut.Tenon;
  }

  @ParameterizedTest
  @ValueSource(strings = {"sideboard", "dining-table", "nightstand"})
  void tapersComeBetweenJointsAndGlue(String name) {
    BuildPlan plan = project(name);
    List<Step> tapering =
        plan.steps().stream().filter(s -> tapers(s).findAny().isPresent()).toList();
    assertFalse(tapering.isEmpty());
    tapering.forEach(step -> assertEquals(List.of(), breaches(plan, step)));
  }

  /** By the names of the cuts alone a taper would come before a tenon. */
  @Test
  void aTenonIsCutBeforeItsOwnPartIsTapered() {
    BuildPlan plan =
        plan(
            Pieces.of(
                """
                parts:
                  left: {stock: odd, x: 0 to 30, y: 0 to 30, z: 0 to 400, grain: z}
                  rail: {stock: ash, x: 30 to 330, y: 5 to 25, z: 300 to 390, grain: x}
                cuts:
                  - taper: {end: rail.right, faces: [bottom], from: 200, off: 40}
                joints:
                  - tenon: {end: rail.left, into: left, depth: 15, thickness: 7, glue: yes}
                """));
    Step tapering =
        plan.steps().stream()
            .filter(s -> tapers(s).findAny().isPresent())
            .findFirst()
            .orElseThrow();
    assertEquals(List.of(), breaches(plan, tapering));
    assertTrue(
        plan.steps().stream()
            .flatMap(step -> step.operations().stream())
            .anyMatch(each -> each.cuts().stream().anyMatch(Cut.Tenon.class::isInstance)));
  }
}
