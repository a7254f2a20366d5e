package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.Clamping.Clamps;
import storyrod.description.Diagnostics;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Piece;

/** Where clamps go, on small pieces of which it is plain. */
class ClampingTest {
  private static List<Clamping.Found> found(TestPiece test) {
    Piece piece = test.piece();
    return Planner.plan(piece, new Diagnostics()).orElseThrow().steps().stream()
        .filter(step -> step.verb() == Verb.FIT)
        .map(step -> Clamping.of(piece, step))
        .toList();
  }

  private static TestPiece shelf(double breadth) {
    TestPiece piece = new TestPiece();
    piece.part("left", "Left", "A", "ash", 0, 18, 0, breadth, 0, 500);
    piece.part("right", "Right", "B", "ash", 618, 636, 0, breadth, 0, 500);
    piece.part("shelf", "Shelf", "C", "ash", 18, 618, 0, breadth, 200, 218);
    piece.letIn("dado", "shelf", Face.LEFT, "left", 6, true);
    return piece.letIn("dado", "shelf", Face.RIGHT, "right", 6, true);
  }

  @Test
  void oneSetOfClampsPressesBothEndsOfAShelfFromSideToSide() {
    Clamps two = new Clamps(Axis.X, "left", "right", 2, Length.mm(636));
    assertEquals(
        List.of(new Clamping.Found(List.of(two), List.of())), found(shelf(300)), "a foot apart");
    assertEquals(1, found(shelf(100)).getFirst().clamps().getFirst().count());
  }

  /** The jaw would have to stand where the wall is. */
  @Test
  void wallCloseBehindTheSideLeavesNoRoomForAJaw() {
    TestPiece piece = TestPiece.withOrder("Rack", "fit floor\nfit bar\nfit wall\nfit lip");
    piece.part("floor", "Floor", "A", "ash", 0, 400, 0, 300, 0, 18);
    piece.part("wall", "Wall", "B", "ash", -30, -12, 0, 300, 0, 200);
    piece.part("bar", "Bar", "C", "ash", -30, 0, 0, 300, -18, 0);
    piece.part("lip", "Lip", "D", "ash", 400, 418, 0, 300, 0, 18);
    piece.fasten("butt", "wall", Face.BOTTOM, "bar", false, "screw", 2);
    piece.fasten("butt", "bar", Face.TOP, "floor", false, "screw", 2);
    piece.fasten("butt", "lip", Face.LEFT, "floor", true, "", 0);
    assertEquals(
        List.of("lip"),
        found(piece).stream()
            .flatMap(each -> each.bare().stream())
            .map(joint -> joint.first())
            .toList());
  }
}
