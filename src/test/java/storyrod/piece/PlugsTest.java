package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.measure.Length;

/** Screws under plugs: the head lies on the bottom of the counterbore; figures worked by hand. */
class PlugsTest {
  private static final Piece PIECE =
      Pieces.of(
          """
            plug: {kind: plug, diameter: 10}
          parts:
            side: {stock: ash, x: 0 to 20, y: 0 to 100, z: 0 to 400, grain: z}
            shelf: {stock: ash, x: side.right to 320, y: 0 to 100, z: 100 to 120, grain: x}
          joints:
            - screws: {through: side.left, into: shelf, count: 2, screw: screw, plug: plug, plug-depth: 8}
          """);

  private static Cut.Holes holes(String part, String term) {
    return PIECE.part(part).cuts().stream()
        .filter(cut -> cut.term().equals(term))
        .map(Cut.Holes.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void counterboreSharesItsCentreWithTheClearanceHole() {
    Cut.Holes bore = holes("side", "counterbore");
    assertEquals(Length.mm(10), bore.diameter());
    assertEquals(Length.mm(8), bore.depth());
    assertEquals(holes("side", "clearance hole").centres(), bore.centres());
    assertEquals(Length.ZERO, holes("side", "clearance hole").countersink());
  }

  /** 40 mm from 8 mm under the face of a part of 20: 40 - 20 + 8 = 28 into the shelf. */
  @Test
  void screwReachesFurtherByWhatItIsSunk() {
    assertEquals(Length.mm(28), holes("shelf", "pilot hole").depth());
  }

  @Test
  void plugsAreCountedWithTheScrews() {
    assertEquals(
        List.of(new Joint.ItemCount("screw", 2), new Joint.ItemCount("plug", 2)),
        PIECE.joints().getFirst().fasteners());
  }

  /** 20 x 100 x 400 less, twice, 8 mm of Ø 10 and 12 mm of the clearance hole. */
  @Test
  void solidIsWhatTheHandWorksOut() {
    double radius = holes("side", "clearance hole").diameter().toMm() / 2;
    double bored = 2 * Math.PI * (8 * 25 + 12 * radius * radius);
    assertEquals(800_000 - bored, PIECE.part("side").solid().volumeMm3(), 0.01);
  }
}
