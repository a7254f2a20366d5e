package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.piece.Pieces;

/** Holes beside tapers and curves, and screws driven into parts that lean. */
class BreaksOutTest {
  private static List<String> findings(String body) {
    return new BreaksOut().findings(Pieces.of(body)).stream().map(Diagnostic::message).toList();
  }

  /** A leg of 50 that has 50 - 24 = 26 left at the floor and 26 + 24 * 30 / 280 at 30 up. */
  private static String leg(String hole) {
    return """
        parts:
          leg: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
        cuts:
          - taper: {end: leg.bottom, faces: [right], from: 280, off: 24}
          - holes: {in: leg.%s, diameter: 8, %s}
        """
        .formatted(hole.split(" ", 2)[0], hole.split(" ", 2)[1]);
  }

  @Test
  void blindHoleThatIsDeeperThanATaperedLegComesOut() {
    String deep = "left at: {y: 15, z: 30}, depth: %s";
    assertEquals(List.of(), findings(leg(deep.formatted(27))));
    assertEquals(
        List.of("a hole comes out through a side of leg, or next to it"),
        findings(leg(deep.formatted(32))));
  }

  @Test
  void holeThroughTheLegsSideRunsOutAtTheTaper() {
    String through = "front at: {x: %s, z: 30}, through: yes";
    assertEquals(List.of(), findings(leg(through.formatted(15))));
    assertEquals(1, findings(leg(through.formatted(27))).size());
  }

  @Test
  void holeDrilledFromATaperedFaceIsAllowed() {
    assertEquals(List.of(), findings(leg("right at: {y: 15, z: 60}, depth: 40")));
    assertEquals(List.of(), findings(leg("right at: {y: 15, z: 60}, through: yes")));
  }

  /** The hollow is 40 deep in the middle of the board, 200 from its end. */
  @Test
  void holeIntoAHollowIsFound() {
    String apron =
        """
        parts:
          apron:
            stock: ash
            x: 0 to 400
            y: 0 to 20
            z: 0 to 100
            grain: x
            outline: [hollow: {edge: bottom, x: 50 to 350, rise: 40}]
        cuts:
          - holes: {in: apron.front, at: {x: 200, z: %s}, diameter: 8, through: yes}
        """;
    assertEquals(List.of(), findings(apron.formatted(50)));
    assertEquals(1, findings(apron.formatted(42)).size());
  }

  /**
   * Straight down into a panel 20 thick that leans by 22°: 22 mm down the screw's middle is 22 sin
   * 22° = 8.2 off the panel's, and 3.2 further on 9.4, of 10; the pilot hole has a radius of its
   * own.
   */
  @Test
  void screwDownIntoALeaningPanelNearlyComesOut() {
    String stool =
        """
        parts:
          seat: {stock: ply18, x: 0 to 500, y: 0 to 300, z: 400 to 418, grain: x}
          leg: {stock: ash, x: 80 to 100, y: 20 to 280, z: 0 to 400, grain: z, turn: {about: y, by: %s, at: {x: leg.right, z: 400}}}
        cuts:
          - bevel: {end: leg.top, to: seat.bottom}
        joints:
          - screws: {through: seat.top, into: leg, count: 2, screw: screw}
        """;
    assertEquals(List.of(), findings(stool.formatted(5)));
    assertEquals(
        List.of("a pilot hole for screw comes out through a side of leg, or next to it"),
        findings(stool.formatted(22)));
  }
}
