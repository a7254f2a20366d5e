package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A dado runs across the grain, a groove along it (common practice), however it is written. */
class SlotTermTest {
  @ParameterizedTest
  @CsvSource({
    "dado, z, dado",
    "dado, y, groove",
    "groove, z, dado",
    "groove, y, groove",
    "dado stop: 12, z, stopped dado",
    "dado stop: 12, y, stopped groove",
    "groove stopped: yes, z, stopped dado",
    "groove stopped: yes, y, stopped groove"
  })
  void theGrainTellsDadoAndGrooveApart(String written, String grain, String term) {
    String[] joint = written.split(" ", 2);
    String more = joint.length > 1 ? ", " + joint[1] : "";
    Piece piece =
        Pieces.of(
            """
            parts:
              side: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 600, grain: %s}
              shelf: {stock: ply18, x: side.right to 418, y: 0 to 280, z: 200 to 218, grain: x}
            joints:
              - %s: {end: shelf.left, into: side, depth: 6%s}
            """
                .formatted(grain, joint[0], more));
    assertEquals(term, piece.part("side").cuts().getFirst().term());
  }
}
