package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.geometry.Face;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

class InsidesTest {
  /** A box 400 x 300 mm, open at the top, whose bottom lies in grooves. */
  private static Piece box(int height, int from, String back) {
    return Pieces.of(
        """
        parts:
          left: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to %1$d, grain: y}
          right: {stock: ply18, x: 382 to 400, y: 0 to 300, z: 0 to %1$d, grain: y}
          front: {stock: ply18, x: 18 to 382, y: 0 to 18, z: 0 to %1$d, grain: x}
          %3$s
          bottom: {stock: ply6, x: 18 to 382, y: 18 to 282, z: %2$d to %2$d + 6, grain: x}
        joints:
          - butt: {end: front.left, to: left, glue: yes}
          - butt: {end: front.right, to: right, glue: yes}
          - groove: {end: bottom.left, into: left, depth: 6}
          - groove: {end: bottom.right, into: right, depth: 6}
          - groove: {end: bottom.front, into: front, depth: 6}
          %4$s
        """
            .formatted(
                height,
                from,
                back.isEmpty() ? "" : BACK.formatted(height),
                back.isEmpty() ? "" : BACK_JOINTS));
  }

  private static final String BACK =
      "back: {stock: ply18, x: 18 to 382, y: 282 to 300, z: 0 to %d, grain: x}";

  private static final String BACK_JOINTS =
      """
      - butt: {end: back.left, to: left, glue: yes}
        - butt: {end: back.right, to: right, glue: yes}
        - groove: {end: bottom.back, into: back, depth: 6}\
      """;

  private static List<Face> ofBottom(Piece piece) {
    return new Insides(piece).faces(piece.part("bottom"));
  }

  /** Nothing is across from it, yet no sander gets into its corners. */
  @Test
  void aBottomBetweenFourWallsOrThreeIsAnInside() {
    assertEquals(List.of(Face.TOP), ofBottom(box(120, 10, BACK)));
    assertEquals(List.of(Face.TOP), ofBottom(box(120, 10, "")));
  }

  @Test
  void aLipIsNoWall() {
    assertEquals(List.of(), ofBottom(box(35, 10, BACK)));
    assertEquals(List.of(Face.TOP), ofBottom(box(36, 10, BACK)));
  }

  /** However deep the walls are, nobody sees what looks at the floor. */
  @Test
  void theUndersideIsLeft() {
    assertEquals(List.of(Face.TOP), ofBottom(box(120, 60, BACK)));
    assertEquals(List.of(), ofBottom(box(120, 100, BACK)));
  }

  /** From front to back a board between two ends is open. */
  @Test
  void betweenTwoWallsASanderRunsThrough() {
    String board =
        """
        parts:
          left: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 120, grain: y}
          right: {stock: ply18, x: 382 to 400, y: 0 to 300, z: 0 to 120, grain: y}
          bottom: {stock: ply6, x: 18 to 382, y: 0 to 300, z: 10 to 16, grain: x}
        joints:
          - dado: {end: bottom.left, into: left, depth: 6, glue: yes}
          - dado: {end: bottom.right, into: right, depth: 6, glue: yes}
        """;
    assertEquals(List.of(), ofBottom(Pieces.of(board)));
  }

  /** Between two legs and below a seat: a stretcher is narrower than what sands it. */
  private static Piece stool(int width, int below) {
    return Pieces.of(
        """
        parts:
          left: {stock: ply18, x: 0 to 18, y: 0 to 260, z: 0 to 300, grain: z}
          right: {stock: ply18, x: 382 to 400, y: 0 to 260, z: 0 to 300, grain: z}
          seat: {stock: ply18, x: 0 to 400, y: 0 to 260, z: 300 to 318, grain: x}
          stretcher: {stock: ply18, x: 18 to 382, y: 120 to 138, z: 300 - %2$d - %1$d to 300 - %2$d, grain: x}
        joints:
          - butt: {end: left.top, to: seat, glue: yes}
          - butt: {end: right.top, to: seat, glue: yes}
          - dado: {end: stretcher.left, into: left, depth: 6, glue: yes}
          - dado: {end: stretcher.right, into: right, depth: 6, glue: yes}
        """
            .formatted(width, below));
  }

  @Test
  void aNarrowBoardWithAWallWithinThePadOfASanderIsAnInside() {
    List<Face> both = List.of(Face.FRONT, Face.BACK);
    assertEquals(both, ofStretcher(stool(75, 80)));
    assertEquals(List.of(), ofStretcher(stool(75, 130)));
    assertEquals(List.of(), ofStretcher(stool(130, 80)));
  }

  private static List<Face> ofStretcher(Piece piece) {
    return new Insides(piece).faces(piece.part("stretcher"));
  }

  @Test
  void anInsideIsSandedBeforeItIsBuiltIn() {
    List<Step> steps = Planner.plan(box(120, 10, BACK), new Diagnostics()).orElseThrow().steps();
    assertFalse(with(steps, "sand bottom").isEmpty());
    assertEquals(
        List.of(true),
        with(steps, "sand bottom").stream()
            .map(sand -> sand < with(steps, "fit bottom").getFirst())
            .toList());
  }

  private static List<Integer> with(List<Step> steps, String operation) {
    return steps.stream()
        .filter(step -> step.operations().stream().anyMatch(op -> op.name().equals(operation)))
        .map(Step::number)
        .toList();
  }
}
