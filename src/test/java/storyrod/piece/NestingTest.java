package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A case as a sub-assembly, with a drawer of two parts in it and a lid of one part on it. */
class NestingTest {
  private static final String CASE =
      """
      assemblies:
        case:
          parts:
            left: {stock: ply18, x: 0 to 18, y: 0 to 300, z: 0 to 400, grain: z}
            right: {stock: ply18, x: 582 to 600, y: 0 to 300, z: 0 to 400, grain: z}
            floor: {stock: ply18, x: left.right to right.left, y: 0 to 300, z: 100 to 118, grain: x}
          joints:
            - dado: {end: floor.left, into: left, depth: 6, glue: yes}
            - dado: {end: floor.right, into: right, depth: 6, glue: yes}
          assemblies:
            drawer:
              parts:
                front: {stock: ply18, x: 31 to 569, y: 0 to 18, z: 130 to 200, grain: x}
                side: {stock: ply18, x: 31 to 49, y: front.back to 290, z: 130 to 200, grain: y}
              joints:
                - butt: {end: side.front, to: front, glue: yes}
        lid:
          parts:
            board: {stock: ply18, x: 0 to 600, y: 0 to 300, z: 400 to 418, grain: x}
      """;

  private static final Nesting NESTING = Nesting.of(Pieces.of(CASE));

  @Test
  void aSubAssemblyIsAUnitOfTheOneAroundIt() {
    assertEquals(List.of("case", "lid"), NESTING.units().get(Nesting.PIECE));
    assertEquals("case", NESTING.level("case.drawer"));
    assertEquals(
        List.of("case.left", "case.right", "case.floor", "case.drawer"),
        NESTING.units().get("case"));
    assertEquals(
        List.of("case.drawer.side", "case.drawer", "case"), NESTING.around("case.drawer.side"));
    assertTrue(NESTING.isIn("case.drawer.front", "case"));
    assertFalse(NESTING.isIn("lid.board", "case"));
  }

  @Test
  void whatNoJointHoldsIsLooseButForTheLargestOfItsLevel() {
    assertEquals(Set.of("case.drawer", "lid"), NESTING.loose());
    assertEquals(Optional.of("case.drawer"), NESTING.looseUnit("case.drawer.side"));
    assertEquals(Optional.empty(), NESTING.looseUnit("case.left"));
  }

  @Test
  void slidesHangTheDrawerInTheCaseAndNotTheCaseOnTheDrawer() {
    List<String> served = List.of("case.drawer.side", "case.left");
    assertTrue(NESTING.isHung("case.drawer.side", served));
    assertFalse(NESTING.isHung("case.left", served));
    assertEquals(List.of("case.drawer"), NESTING.hungBy(served));
  }
}
