package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Axis;
import storyrod.geometry.Fineness;
import storyrod.measure.Length;

/** A breadboard end bored by its joint; all figures are worked by hand. */
class TonguePegsTest {
  private static Piece piece(String keys) {
    return Pieces.of(
        """
          peg: {kind: other, diameter: 8}
        parts:
          slab: {stock: ash, x: 100 to 600, y: 0 to 400, z: 0 to 20, grain: x}
          end: {stock: ash, x: 0 to 100, y: 0 to 400, z: 0 to 20, grain: y}
        joints:
          - tongue: {end: slab.left, into: end, depth: 30, thickness: 6, peg: peg, peg-from: bottom%s}
        """
            .formatted(keys));
  }

  private static <T extends Cut> List<T> cuts(Piece piece, String part, Class<T> kind) {
    return piece.part(part).cuts().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** 400 less 50 at both ends: 150 apart; half of the tongue of 30 mm inside the end: x = 85. */
  @Test
  void endHasRoundHolesAndTheTongueARoundOneInItsMiddleOnly() {
    Piece piece = piece(", peg-edge: 50, peg-depth: 15");
    Cut.Holes inEnd = cuts(piece, "end", Cut.Holes.class).getFirst();
    assertEquals(3, inEnd.count());
    assertEquals(Length.mm(150), inEnd.step());
    assertEquals(Length.mm(85), inEnd.first().on(Axis.X));
    assertEquals(Length.mm(15), inEnd.depth());
    List<Cut.Holes> inSlab = cuts(piece, "slab", Cut.Holes.class);
    assertEquals(1, inSlab.size());
    assertEquals(Length.mm(200), inSlab.getFirst().first().on(Axis.Y));
    List<Slots> slots = cuts(piece, "slab", Slots.class);
    assertEquals(
        List.of(Length.mm(50), Length.mm(350)),
        slots.stream().map(slot -> slot.first().on(Axis.Y)).toList());
    slots.forEach(slot -> assertEquals(Length.mm(18), slot.length()));
  }

  /** Slab 500 x 400 x 20 + 30 x 400 x 6, less one hole and two slots of 10 x 8 + pi 16 in 6 mm. */
  @Test
  void slotsGoThroughTheTongueOnly() {
    Part slab = piece(", peg-edge: 50").part("slab");
    double left = Carving.of(slab.box(), slab.cuts(), Fineness.DRAWN).volumeMm3();
    double round = Math.PI * 16;
    assertEquals(4_072_000 - 6 * (3 * round + 2 * 80), left, 5);
  }

  @Test
  void withoutPlayAllHolesAreRound() {
    Piece piece = piece(", peg-play: 0");
    assertEquals(3, cuts(piece, "slab", Cut.Holes.class).getFirst().count());
    assertEquals(List.of(), cuts(piece, "slab", Slots.class));
  }
}
