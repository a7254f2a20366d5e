package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.geometry.Axis;
import storyrod.measure.Length;

/** Fasteners in a row: what is printed of them adds up to the part, from either end. */
class SpreadTest {
  private static List<Length> places(String depth, int count) {
    Piece piece =
        Pieces.of(
            """
            parts:
              side: {stock: ash, x: 0 to 20, y: 0 to DEPTH, z: 0 to 400, grain: z}
              shelf: {stock: ash, x: side.right to 320, y: 0 to DEPTH, z: 100 to 120, grain: x}
            joints:
              - screws: {through: side.left, into: shelf, count: COUNT, screw: screw}
            """
                .replace("DEPTH", depth)
                .replace("COUNT", "" + count));
    Cut.Holes holes = (Cut.Holes) piece.part("shelf").cuts().getFirst();
    return holes.centres().stream().map(each -> each.on(Axis.Y)).toList();
  }

  @ParameterizedTest
  @CsvSource({"101, 2", "101, 3", "383, 4", "377, 7", "96, 2"})
  void stepsAreFiguresThatPrintDoesNotRound(String depth, int count) {
    List<Length> at = places(depth, count);
    Length step = at.get(1).minus(at.get(0));
    Length whole = Length.parse(depth + " mm");
    assertEquals(0, step.ticks() % Length.micrometres(200).ticks(), step + " in twice a tenth");
    assertEquals(at.getFirst(), whole.minus(at.getLast()), "both ends read the same");
    assertTrue(!step.times(count).isShorterThan(whole), "never closer than their even share");
    assertTrue(!at.getFirst().times(count * 5L).isShorterThan(whole.times(2)), "room at the ends");
  }

  /** An odd number of tenths has no even half, so both steps and ends are whole tenths too. */
  @ParameterizedTest
  @CsvSource({"100.1, 2", "382.7, 4", "96.3, 6"})
  void neitherStepsNorEndsAreRounded(String depth, int count) {
    List<Length> at = places(depth, count);
    long tenth = Length.micrometres(100).ticks();
    assertEquals(0, at.get(1).minus(at.get(0)).ticks() % tenth, at.toString());
    assertEquals(0, at.getFirst().ticks() % tenth, at.toString());
    assertEquals(Length.parse(depth + " mm"), at.getFirst().plus(at.getLast()));
  }
}
