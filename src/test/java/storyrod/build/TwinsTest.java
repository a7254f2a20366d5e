package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.geometry.Face;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

/**
 * Symmetric parts go together in one step, as Agrawala et al. ask (Designing Effective Step-By-Step
 * Assembly Instructions, 2003): here two cleats under a board with two feet at each.
 */
class TwinsTest {
  private static final String STAND =
      """
      parts:
        board: {stock: ply18, x: 0 to 800, y: 0 to 300, z: 100 to 118, grain: x}
        left-cleat: {title: Cleat, stock: ply18, x: 60 to 78, y: 0 to 300, z: 40 to 100, grain: y}
        right-cleat: {title: Cleat, stock: ply18, x: 722 to 740, y: 0 to 300, z: 40 to 100, grain: y}
        left-front: {title: Foot, stock: ply18, x: 42 to 60, y: 0 to 40, z: 0 to 100, grain: z}
        left-back: {title: Foot, stock: ply18, x: 42 to 60, y: 260 to 300, z: 0 to 100, grain: z}
        right-front: {title: Foot, stock: ply18, x: 740 to 758, y: 0 to 40, z: 0 to 100, grain: z}
        right-back: {title: Foot, stock: ply18, x: 740 to 758, y: 260 to 300, z: 0 to 100, grain: z}
      joints:
        - butt: {end: left-cleat.top, to: board, glue: yes}
        - butt: {end: right-cleat.top, to: board, glue: yes}
        - butt: {end: left-front.right, to: left-cleat, glue: yes}
        - butt: {end: left-back.right, to: left-cleat, glue: yes}
        - butt: {end: right-front.left, to: right-cleat, glue: yes}
        - butt: {end: right-back.left, to: right-cleat, glue: yes}
      """;

  private static BuildPlan plan(Piece piece) {
    return Planner.plan(piece, new Diagnostics()).orElseThrow();
  }

  private static Step fitting(String part, String more) {
    return plan(Pieces.of(STAND + more)).steps().stream()
        .filter(step -> step.verb() == Verb.FIT && step.newParts().contains(part))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void mirrorImagesComeInOneStepFromBothSides() {
    Step feet = fitting("left-front", "");
    assertEquals(
        List.of("left-back", "left-front", "right-back", "right-front"),
        feet.newParts().stream().sorted().toList());
    assertEquals(
        feet.enters(List.of("left-front")).map(Face::opposite),
        feet.enters(List.of("right-front")));
    assertEquals(Optional.of(Face.RIGHT), feet.enters(List.of("left-back")));
  }

  @Test
  void whatTheyAreFittedToComesBeforeThem() {
    Step cleats = fitting("left-cleat", "");
    assertTrue(cleats.newParts().contains("right-cleat"), cleats.newParts()::toString);
    assertTrue(cleats.number() < fitting("left-front", "").number());
  }

  @Test
  void partsRunIntoNothingWhereTheyAreMirrored() {
    Piece piece = Pieces.of(STAND);
    assertEquals(List.of(), Replay.of(piece, plan(piece)).collisions());
  }

  @Test
  void aGlueThatSetsFastTakesOneSideAtATime() {
    // A good minute for each joint: two in three minutes.
    Step feet = fitting("left-front", "glue: {product: glue, open-minutes: 3}\n");
    assertEquals(2, feet.newParts().size(), feet.newParts()::toString);
    assertEquals(List.of(), feet.mirrored());
  }

  @Test
  void theMakersOwnOrderIsKept() {
    Step feet =
        fitting(
            "left-front",
            "build: [{stage: Left, order: [fit left-cleat, fit left-front, fit left-back]}]\n");
    assertTrue(
        feet.newParts().stream().noneMatch(part -> part.startsWith("right-")),
        feet.newParts()::toString);
  }
}
