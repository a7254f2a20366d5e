package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

class HollowsTest {
  /** A dado's shelf is glued in, in a screw's way, and a panel lies loose in its groove. */
  @ParameterizedTest
  @CsvSource({"dado, z, HOUSED", "dado, y, HOUSED", "groove, z, TAKEN", "groove, y, TAKEN"})
  void theJointAndNotTheGrainTellsWhatIsHoused(String joint, String grain, Hollow.Use use) {
    Piece piece =
        Pieces.of(
            """
            parts:
              side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 600, grain: %s}
              shelf: {stock: ply18, x: side.right to 418, y: 0 to 280, z: 200 to 218, grain: x}
            joints:
              - %s: {end: shelf.left, into: side, depth: 6}
            """
                .formatted(grain, joint));
    assertEquals(use, new Hollows(piece).of(piece.part("side")).getFirst().use());
  }
}
