package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;
import storyrod.wood.Beam;

/** What partitions pass on, and what stiffens a flat part, by figures worked out by hand. */
class PassedLoadTest {
  /** A seat of 1200 mm on two partitions at its thirds, which stand on a floor between two feet. */
  private static final String BENCH =
      """
      parts:
        left-foot: {stock: ash, x: 0 to 20, y: 0 to 300, z: 0 to 100, grain: y}
        right-foot: {stock: ash, x: 1180 to 1200, y: 0 to 300, z: 0 to 100, grain: y}
        floor: {stock: ash, x: 0 to 1200, y: 0 to 300, z: 100 to 120, grain: x}
        one: {stock: ash, x: 390 to 410, y: 0 to 300, z: 120 to 400, grain: z}
        two: {stock: ash, x: 790 to 810, y: 0 to 300, z: 120 to 400, grain: z}
        MORE
        seat: {stock: ash, x: 0 to 1200, y: 0 to DEEP, z: 400 to 420, grain: x, load: 30 kg}
      """;

  private static List<Diagnostic> found(String more) {
    return found("300", more);
  }

  private static List<Diagnostic> found(String deep, String more) {
    return new PassedLoad().findings(Pieces.of(BENCH.replace("DEEP", deep).replace("MORE", more)));
  }

  /**
   * A third of 30 kg at each of two places 380 mm from the ends of 1160 mm: P a (3 L² - 4 a²) / 24
   * E I with the modulus of white ash, 12,000 MPa (Wood Handbook, table 5-3a), and I = 300 x 20³ /
   * 12.
   */
  @Test
  void eachPartitionPassesOnHalfOfTheLoadOnEachSide() {
    double force = 10 * 9.80665;
    double a = 380;
    double span = 1160;
    double stiff = 12_000 * 300 * Math.pow(20, 3) / 12;
    double bends = force * a * (3 * span * span - 4 * a * a) / (24 * stiff);
    String said = found("").getFirst().message();
    assertTrue(
        said.startsWith(
            "floor bends by %.1f mm over a span of 1160.0 mm under its share of the 30 kg on seat"
                .formatted(bends)),
        said);
    assertTrue(said.contains("passed on by one, two;"), said);
  }

  @Test
  void feetRightUnderPartitionsCarryThem() {
    String feet =
        """
        first: {stock: ash, x: 390 to 410, y: 0 to 300, z: 0 to 100, grain: y}
          second: {stock: ash, x: 790 to 810, y: 0 to 300, z: 0 to 100, grain: y}\
        """;
    assertEquals(List.of(), found(feet));
  }

  /** A second board behind the seat, on the same partitions. */
  @Test
  void loadsOfSeveralPartsAddUp() {
    String rear =
        "rear: {stock: ash, x: 0 to 1200, y: 150 to 300, z: 400 to 420, grain: x, load: 12 kg}";
    List<Diagnostic> both = found("150", rear);
    assertEquals(1, both.size());
    assertTrue(both.getFirst().message().contains("the 42 kg on rear, seat"), both::toString);
    double one = bends(found("150", "").getFirst());
    assertEquals(1.4 * one, bends(both.getFirst()), 0.1);
  }

  private static double bends(Diagnostic found) {
    return Double.parseDouble(found.message().replaceAll(".* bends by ([0-9.]+) mm .*", "$1"));
  }

  /**
   * A strip of 20 x 60 mm along the front stiffens if it covers nine tenths, flush with the top or
   * with the underside alike, and not if it is shorter or lies elsewhere.
   */
  @Test
  void aStripStiffensFlushAboveOrBelow() {
    double bare = secondMoment("x: 0 to 100", "z: 60 to 120");
    assertEquals(bare, secondMoment("x: 70 to 1130", "z: 70 to 130"));
    assertEquals(bare, secondMoment("x: 70 to 1130", "z: 80 to 140"));
    double top = secondMoment("x: 60 to 1140", "z: 60 to 120");
    assertTrue(top > 3 * bare, top + " " + bare);
    assertEquals(top, secondMoment("x: 60 to 1140", "z: 100 to 160"), 1e-6);
    assertEquals(bare, secondMoment("x: 61 to 1139", "z: 60 to 120"));
  }

  private static double secondMoment(String along, String high) {
    String glued =
        """
        parts:
          floor: {stock: ash, x: 0 to 1200, y: 0 to 300, z: 100 to 120, grain: x}
          strip: {stock: ash, ALONG, y: 0 - 20 to 0, HIGH, grain: x}
        joints:
          - butt: {end: strip.back, to: floor, glue: yes}
        """;
    Piece piece = Pieces.of(glued.replace("ALONG", along).replace("HIGH", high));
    return FlatBeam.of(piece, piece.part("floor")).map(Beam::secondMoment).orElseThrow();
  }
}
