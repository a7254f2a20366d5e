package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;
import storyrod.words.Words;

/** What the steps say of a dado that ends short of an edge. */
class StoppedDadoStepsTest {
  private static final String SHELF =
      """
      parts:
        side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 600, grain: z}
        shelf: {stock: ply18, x: side.right to 418, y: 0 to 300, z: 200 to 218, grain: x}
      joints:
        - dado: {end: shelf.left, into: side, depth: 6, stop: 12, glue: yes}
      """;

  private static List<StepText> steps(String body) throws IOException {
    Piece piece = Pieces.of(body);
    BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
    StepWriter writer = new StepWriter(piece, Words.ENGLISH, new Templates(), plan);
    return plan.steps().stream().map(writer::write).toList();
  }

  private static StepText titled(List<StepText> steps, String title) {
    return steps.stream()
        .filter(step -> step.title().equals(title))
        .findFirst()
        .orElseThrow(
            () -> new AssertionError(steps.stream().map(StepText::title).toList().toString()));
  }

  @Test
  void itIsRoutedFromTheOpenEdgeToAStop() throws IOException {
    StepText step = titled(steps(SHELF), "Rout the stopped dados in the side");
    assertEquals(
        List.of("router", "straight or spiral bit", "straightedge", "chisel"), step.tools());
    assertTrue(
        step.sentences()
            .contains(
                "On the side (A), strike the near side of each dado 200 mm from the bottom end."),
        step::toString);
    assertEquals(
        "Square each end with a chisel; or leave it round, and ease the notched corner of the part"
            + " that goes in until it fits.",
        step.sentences().getLast());
  }

  @Test
  void whatGoesInIsNotched() throws IOException {
    titled(steps(SHELF), "Cut the notches in the shelf");
  }
}
