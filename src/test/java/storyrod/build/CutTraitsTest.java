package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

class CutTraitsTest {
  /** The two outer blades of a dado set cut 1/4 in (common practice): 2 mm is one saw kerf. */
  @ParameterizedTest
  @CsvSource({"x", "y"})
  void aThinPanelHasANarrowGrooveWhicheverWayTheGrainRuns(String grain) {
    Piece piece =
        Pieces.of(
            """
            parts:
              rail: {stock: ply18, x: 0 to 400, y: 0 to 60, z: 0 to 18, grain: %s}
              panel: {stock: strip, x: 0 to 400, y: 29 to 31, z: rail.top to 218, grain: z}
            joints:
              - groove: {end: panel.bottom, into: rail, depth: 6}
            """
                .formatted(grain));
    Part rail = piece.part("rail");
    assertEquals(List.of("cut-narrow-groove"), new CutTraits(piece).of(rail, rail.cuts()));
  }
}
