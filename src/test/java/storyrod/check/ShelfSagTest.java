package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.piece.Pieces;
import storyrod.wood.Mass;

/**
 * How far a board of 300 x 20 mm of white ash bends, worked out by hand with 12,000 MPa (Wood
 * Handbook, table 5-3a) and 5 w L^4 / 384 E I on two supports, w L^4 / 185 E I on three.
 */
class ShelfSagTest {
  private static final double STIFF = 12_000 * 300 * Math.pow(20, 3) / 12;

  private static final String BOARD =
      """
      parts:
        left: {stock: ash, x: 0 to 20, y: 0 to 300, z: 0 to 100, grain: y}
        right: {stock: ash, x: 1180 to 1200, y: 0 to 300, z: 0 to 100, grain: y}
        MORE
        board: {stock: ash, x: 0 to 1200, y: 0 to 300, z: 100 to 120, grain: x, load: 30 kg}
      """;

  private static List<Sag> sags(String more) {
    return ShelfSag.all(Pieces.of(BOARD.replace("MORE", more)));
  }

  /** Its own mass comes on top of the 30 kg. */
  private static double newtonsPerMm(Sag sag) {
    double own =
        Mass.density(sag.shelf().stock()).orElseThrow() * sag.shelf().box().volumeMm3() / 1e9;
    return (30 + own) * 9.80665 / 1200;
  }

  /** The 10 mm that stand out beyond the middle of a support hold nothing down. */
  @Test
  void boardOnTwoSupportsLiesFreelyOnThem() {
    Sag sag = sags("").getFirst();
    double bends = 5 * newtonsPerMm(sag) * Math.pow(1180, 4) / (384 * STIFF);
    assertEquals(1180, sag.span(), 0.1);
    assertEquals(bends, sag.bends(), 0.01 * bends);
  }

  @Test
  void supportInTheMiddleMakesTwoSpansOfIt() {
    Sag sag =
        sags("middle: {stock: ash, x: 590 to 610, y: 0 to 300, z: 0 to 100, grain: y}").getFirst();
    double bends = newtonsPerMm(sag) * Math.pow(590, 4) / (185 * STIFF);
    assertEquals(590, sag.span(), 0.1);
    assertEquals(bends, sag.bends(), 0.01 * bends);
  }

  /**
   * A third beside two thirds: the longer span is taken to lie freely, which is on the safe side.
   */
  @Test
  void muchShorterSpanHoldsNothingDown() {
    Sag sag =
        sags("middle: {stock: ash, x: 390 to 410, y: 0 to 300, z: 0 to 100, grain: y}").getFirst();
    double bends = 5 * newtonsPerMm(sag) * Math.pow(790, 4) / (384 * STIFF);
    assertEquals(bends, sag.bends(), 0.01 * bends);
  }

  @Test
  void boardOnThePlinthThatStandsOnTheFloorDoesNotBend() {
    assertTrue(sags(rails("20 to 1180", "280 to 300", "0")).isEmpty());
    assertEquals(1, sags(rails("20 to 1180", "280 to 300", "10")).size());
  }

  /** Beyond a rail that ends early, or behind two at the front, nothing carries it. */
  @Test
  void railsThatEndEarlyOrLieAtOneEdgeAreNoPlinth() {
    assertEquals(1, sags(rails("20 to 900", "280 to 300", "0")).size());
    assertEquals(1, sags(rails("20 to 1180", "40 to 60", "0")).size());
  }

  private static String rails(String reach, String deep, String low) {
    return "front: {stock: ash, x: 20 to 1180, y: 0 to 20, z: 0 to 100, grain: x}\n"
        + "  back: {stock: ash, x: %s, y: %s, z: %s to 100, grain: x}".formatted(reach, deep, low);
  }
}
