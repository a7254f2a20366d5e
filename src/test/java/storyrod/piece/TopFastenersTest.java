package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** What each kind of top fastener has cut into the rail; all figures are worked by hand. */
class TopFastenersTest {
  private static final String TABLE =
      """
        figure-eight: {kind: rotating-fastener, diameter: 20, thickness: 3}
        button: {kind: button, width: 25, thickness: 18, tongue: 10, tongue-thickness: 6, travel: 6}
      parts:
        rail: {stock: ash, x: 0 to 600, y: 50 to 70, z: 0 to 80, grain: x}
        top: {stock: ash, x: 0 to 600, y: 0 to 300, z: 80 to 100, grain: x}
      joints:
        - fastened-top: {top: top.bottom, rail: rail.back, screw: screw, count: 3, %s}
      """;

  private static Piece piece(String keys) {
    return Pieces.of(TABLE.formatted(keys));
  }

  private static Cut cutOf(Piece piece) {
    return piece.part("rail").cuts().getFirst();
  }

  /** Middles of three shares of 600; 7.5 of the radius 10 from the back at 70. */
  @Test
  void rotatingFastenersLieInRecessesThatAreOpenAtTheirSide() {
    Piece piece = piece("fastener: figure-eight");
    Cut.Holes recess = (Cut.Holes) cutOf(piece);
    assertEquals(Face.TOP, recess.from());
    assertEquals(Length.mm(100), recess.first().on(Axis.X));
    assertEquals(Length.mm(200), recess.step());
    assertEquals(Length.parse("62.5 mm"), recess.first().on(Axis.Y));
    assertEquals(Length.mm(3), recess.depth());
    assertEquals(
        List.of(new Joint.ItemCount("figure-eight", 3), new Joint.ItemCount("screw", 6)),
        piece.joints().getFirst().fasteners());
  }

  /** 6 mm from 13 mm below the top at 80; 10 + 1/16 in deep, right along. */
  @Test
  void buttonsSlideInAGrooveOfTheirTonguesThickness() {
    Cut.Trench groove = (Cut.Trench) cutOf(piece("fastener: button, slot-from-top: 13"));
    assertEquals(new Range(Length.mm(61), Length.mm(67)), groove.removed().z());
    assertEquals(Length.parse("11.5875 mm"), groove.depth());
    assertEquals(new Range(Length.ZERO, Length.mm(600)), groove.removed().x());
  }

  /** Each as long as the button is wide and can travel: 25 + 6; in the middle of its height: 64. */
  @Test
  void buttonsMayHaveAMortiseEach() {
    Slots slots = (Slots) cutOf(piece("fastener: button, slot-from-top: 13, slots: mortises"));
    assertEquals(3, slots.count());
    assertEquals(Length.mm(31), slots.length());
    assertEquals(Length.mm(6), slots.width());
    assertEquals(Length.mm(64), slots.first().on(Axis.Z));
    assertEquals(Face.BACK, slots.from());
  }

  /** A disc of 100 mm, 12 mm deep, leaves 2 sqrt(12 x 88) = 64.99 mm. */
  @Test
  void clipsMayHaveSlotsOfABiscuitJoiner() {
    Slots slots =
        (Slots) cutOf(piece("fastener: clip, slot-from-top: 10, slot-depth: 12, slots: plunged"));
    assertEquals(64.992, slots.length().toMm(), 0.001);
    assertEquals(Length.mm(4), slots.width());
  }
}
