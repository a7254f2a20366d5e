package storyrod.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.piece.Pieces;

/** The balance of a small chest, worked by hand from volumes, 680 kg/m³ and middles of boxes. */
class StandingTest {
  private static final String CHEST =
      """
      parts:
        left: {stock: ply18, x: 0 to 18, y: FRONT to 300, z: 0 to 700, grain: z}
        right: {stock: ply18, x: 382 to 400, y: FRONT to 300, z: 0 to 700, grain: z}
        back: {stock: ply18, x: left.right to right.left, y: 282 to 300, z: 0 to 700, grain: z}
      assemblies:
        drawer:
          parts:
            side: {stock: ply18, x: 31 to 49, y: 0 to 280, z: 400 to 600, grain: y}
            front: {stock: ply18, x: side.right to 351, y: 0 to 18, z: 400 to 600, grain: x}
            far: {stock: ply18, x: 351 to 369, y: 0 to 280, z: 400 to 600, grain: y}
          joints:
            - butt: {end: front.left, to: side, glue: yes}
            - butt: {end: front.right, to: far, glue: yes}
      joints:
        - butt: {end: back.left, to: left, glue: yes}
        - butt: {end: back.right, to: right, glue: yes}
      hardware:
        - {item: long-slide, parts: [drawer.side, drawer.far, left, right]}
      """;

  /**
   * Sides 2 x 2.5704 kg at 150 mm, back 3.118752 kg at 291 mm: 1678.68 kg·mm. The drawer, 280 mm
   * out: sides 2 x 0.68544 kg at -140 mm, front 0.739296 kg at -271 mm: 392.27 kg·mm.
   */
  @Test
  void anOpenDrawerLiesBeforeTheFeet() {
    Balance open = chest("0").orElseThrow().allOpen();
    assertEquals(1678.68, open.restoring(), 0.01);
    assertEquals(392.27, open.overturning(), 0.01);
  }

  /** 27.2155 kg at 280 mm before the feet add 7620.34 kg·mm: 0.209 of what tips it. */
  @Test
  void aChildOnItsEdgeTipsIt() {
    Standing.Worst worst = chest("0").orElseThrow().childOnOne();
    assertEquals("drawer", worst.opening().hung().unit());
    assertEquals(8012.61, worst.balance().overturning(), 0.01);
    assertEquals(0.2095, worst.balance().ratio(), 0.0001);
  }

  /** Sides that begin 50 mm further back stand 50 mm further back, with everything before that. */
  @Test
  void theLineIsWhereItTouchesTheFloor() {
    Balance back = chest("50").orElseThrow().allOpen();
    double sides = 2 * 2.5704 * 250 / 300 * 125;
    assertEquals(sides + 3.118752 * 241, back.restoring(), 0.01);
    assertEquals(2 * 0.68544 * 190 + 0.739296 * 321, back.overturning(), 0.01);
  }

  @Test
  void nothingIsSaidWhereADensityIsUnknown() {
    String odd =
        CHEST.replace("back: {stock: ply18", "back: {stock: odd").replace("282 to", "270 to");
    assertTrue(Standing.of(Pieces.of(odd.replace("FRONT", "0"))).isEmpty());
  }

  @Test
  void nothingIsSaidWhereNothingOpens() {
    assertTrue(
        Standing.of(Pieces.of(CHEST.substring(0, CHEST.indexOf("hardware:")).replace("FRONT", "0")))
            .isEmpty());
  }

  private static Optional<Standing> chest(String front) {
    return Standing.of(Pieces.of(CHEST.replace("FRONT", front)));
  }
}
