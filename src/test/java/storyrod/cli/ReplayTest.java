package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FirstMove;
import storyrod.build.Planner;
import storyrod.build.Replay;
import storyrod.description.Description;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Piece;
import storyrod.piece.PieceBuilder;

/** Every project and every example is put together again in small steps, and nothing collides. */
class ReplayTest {
  private static final Path EXAMPLES = Path.of("src/main/resources/storyrod/reference/examples");

  /** Examples that name a file which is not there. */
  private static final List<String> WITH_FILES = List.of("assembly.yaml", "assembly-turn.yaml");

  static List<Path> projects() {
    return ProjectsTest.projects().stream().map(each -> each.resolve("project.yaml")).toList();
  }

  static List<Path> examples() {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files
          .filter(file -> !WITH_FILES.contains(file.getFileName().toString()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("projects")
  void partsOfAProjectReachTheirPlaces(Path file) {
    assertTrue(replay(file).moves() > 2);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void partsOfAnExampleReachTheirPlaces(Path file) {
    replay(file);
  }

  /** A checker that finds nothing wrong with a wrong plan would prove nothing. */
  @Test
  void planWithEveryWayTurnedRoundCollides() {
    Piece piece = piece(Path.of("projects/sideboard/project.yaml"));
    BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
    BuildPlan wrong =
        new BuildPlan(plan.steps().stream().map(ReplayTest::turnedRound).toList(), plan.needs());
    assertTrue(Replay.of(piece, wrong).collisions().size() > plan.steps().size() / 4);
  }

  /** A slab that goes down beside its place and then under a lip; a straight way runs into that. */
  @Test
  void bothMovesArePlayedWhereOneIsNotEnough() {
    Piece piece = piece(Path.of("src/test/resources/build/lip.yaml"));
    BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
    assertEquals(List.of(), Replay.of(piece, plan).collisions());
    assertEquals(
        List.of(new FirstMove(Face.BOTTOM, Length.mm(25))),
        plan.steps().stream().flatMap(step -> step.firstMove().stream()).toList());
    List<Step> straight = plan.steps().stream().map(ReplayTest::inOneMove).toList();
    assertEquals(1, Replay.of(piece, new BuildPlan(straight, plan.needs())).collisions().size());
  }

  private static Step inOneMove(Step step) {
    return with(step, step.enters(), Optional.empty());
  }

  private static Step turnedRound(Step step) {
    return with(step, step.enters().map(Face::opposite), step.firstMove());
  }

  private static Step with(Step step, Optional<Face> enters, Optional<FirstMove> firstMove) {
    return new Step(
        step.number(),
        step.stage(),
        step.operations(),
        step.newParts(),
        step.standing(),
        enters,
        step.mirrored(),
        firstMove,
        step.down(),
        step.hardware(),
        step.tools(),
        step.cautions(),
        step.settings(),
        step.say(),
        step.minutes(),
        step.waitMinutes());
  }

  private static Replay.Found replay(Path file) {
    Piece piece = piece(file);
    BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
    Replay.Found found = Replay.of(piece, plan);
    assertEquals(List.of(), found.collisions());
    return found;
  }

  private static Piece piece(Path file) {
    Diagnostics found = new Diagnostics();
    Description description =
        Pipeline.reader()
            .read(new SourceText(file.toString(), Shell.read(file)), found)
            .orElseThrow();
    return PieceBuilder.build(description, found).orElseThrow();
  }
}
