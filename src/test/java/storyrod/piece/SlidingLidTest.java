package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** Lids that slide in grooves; all figures are worked by hand. */
class SlidingLidTest {
  /** A side 200 long and 90 high, 18 thick, and a lid 6 thick that ends 20 short of its back. */
  private static final String BOX =
      """
      parts:
        side: {stock: ply18, x: 0 to 18, y: 0 to 200, z: 0 to 90, grain: y}
        lid: {stock: ply6, x: side.right to 150, y: 0 to 180, z: 70 to 76, grain: y}
      joints:
        - sliding-lid: {end: lid.left, into: side, depth: 6, opens: front}
      """;

  private static Cut.Trench grooveOf(Piece piece) {
    return (Cut.Trench) piece.part("side").cuts().getFirst();
  }

  /**
   * The lid lies on the lower wall; 0.8 mm are free above, at the bottom of the groove and behind.
   */
  @Test
  void grooveHasRoomAndIsOpenWhereTheLidComesOut() {
    Piece piece = Pieces.of(BOX);
    assertEquals(new Range(Length.ZERO, Length.parse("180.8 mm")), grooveOf(piece).removed().y());
    assertEquals(new Range(Length.mm(70), Length.parse("76.8 mm")), grooveOf(piece).removed().z());
    assertEquals(Length.parse("6.8 mm"), grooveOf(piece).depth());
    assertEquals(Length.mm(12), piece.part("lid").box().x().from());
  }

  /** Side 18 x 200 x 90 - 6.8 x 180.8 x 6.8 = 315,639.808; lid (132 + 6) x 180 x 6 = 149,040. */
  @Test
  void solidsAreWhatTheHandWorksOut() {
    Piece piece = Pieces.of(BOX);
    assertEquals(315_639.808, piece.part("side").solid().volumeMm3(), 0.01);
    assertEquals(149_040, piece.part("lid").solid().volumeMm3(), 0.01);
  }

  @Test
  void itGoesInAlongTheGrooveAndIsNeverGlued() {
    Joint joint = Pieces.of(BOX).joints().getFirst();
    assertEquals(Face.BACK, joint.entry());
    assertFalse(joint.glued());
    assertTrue(joint.slides());
  }

  /** A lid of 18 mm with a tongue of 6 at its bottom; the shoulder stands 0.8 clear of the side. */
  @Test
  void thinnedEdgeLeavesItsShoulderClear() {
    Piece piece =
        Pieces.of(
            BOX.replace("lid: {stock: ply6", "lid: {stock: ply18")
                .replace("z: 70 to 76", "z: 60 to 78")
                .replace("opens", "thickness: 6, setback: 0, from: bottom, opens"));
    Cut.Tenon tongue = (Cut.Tenon) piece.part("lid").cuts().getFirst();
    assertEquals(new Range(Length.mm(12), Length.parse("18.8 mm")), tongue.tenon().x());
    assertEquals(new Range(Length.mm(60), Length.mm(66)), tongue.tenon().z());
    assertEquals(new Range(Length.mm(60), Length.parse("66.8 mm")), grooveOf(piece).removed().z());
  }

  /** At the far edge the groove takes the lid over its width and a little room on both sides. */
  @Test
  void edgeOppositeIsAStop() {
    Piece piece =
        Pieces.of(
            """
            parts:
              side: {stock: ply18, x: 0 to 200, y: 180 to 198, z: 0 to 90, grain: x}
              lid: {stock: ply6, x: 50 to 150, y: 0 to side.front, z: 70 to 76, grain: y}
            joints:
              - sliding-lid: {end: lid.back, into: side, depth: 6, room: 1, opens: front}
            """);
    assertEquals(new Range(Length.mm(49), Length.mm(151)), grooveOf(piece).removed().x());
    assertEquals(Length.mm(7), grooveOf(piece).depth());
    assertFalse(piece.joints().getFirst().slides());
  }

  @Test
  void faultsAreTold() {
    assertCodes(List.of("lid-opens"), BOX.replace("opens: front", "opens: left"));
    assertCodes(List.of("lid-opens"), BOX.replace("opens: front", "opens: top"));
    assertCodes(List.of("lid-tongue"), BOX.replace("opens", "setback: 1, from: top, opens"));
    assertCodes(List.of("cut-too-deep"), BOX.replace("depth: 6", "depth: 17.2"));
    assertCodes(List.of(), BOX.replace("depth: 6", "depth: 17.1"));
    assertCodes(List.of("slot-at-edge"), BOX.replace("z: 70 to 76", "z: 83.2 to 89.2"));
    assertCodes(List.of("tenon-too-thick"), BOX.replace("opens", "thickness: 6.1, opens"));
  }

  private static void assertCodes(List<String> codes, String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(codes, faults.stream().map(Diagnostic::code).toList(), faults.toString());
  }
}
