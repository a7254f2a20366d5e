package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.build.Clamping.Clamps;
import storyrod.description.Diagnostics;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Joint;
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
        List.of(new Clamping.Found(List.of(two), List.of(), List.of(), List.of())),
        found(shelf(300)),
        "a foot apart");
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
    assertEquals(List.of("lip"), bare(piece));
  }

  /** A strip on a shelf's front, the last to come, with a back in grooves behind it or without. */
  private static TestPiece edged(boolean closed) {
    String back = closed ? "fit back\n" : "";
    TestPiece piece =
        TestPiece.withOrder("Rack", "fit left\nfit shelf\n" + back + "fit right\nfit strip");
    piece.part("left", "Left", "A", "ash", 0, 18, 0, 320, 0, 1000);
    piece.part("right", "Right", "B", "ash", 618, 636, 0, 320, 0, 1000);
    piece.part("shelf", "Shelf", "C", "ash", 18, 618, 20, 300, 500, 518);
    piece.part("strip", "Strip", "E", "ash", 18, 618, 0, 20, 500, 518);
    if (closed) {
      piece.part("back", "Back", "D", "ash", 18, 618, 300, 306, 0, 1000);
      piece.letIn("groove", "back", Face.LEFT, "left", 6, false);
      piece.letIn("groove", "back", Face.RIGHT, "right", 6, false);
    }
    piece.letIn("dado", "shelf", Face.LEFT, "left", 6, true);
    piece.letIn("dado", "shelf", Face.RIGHT, "right", 6, true);
    return piece.fasten("butt", "strip", Face.BACK, "shelf", true, "", 0);
  }

  @Test
  void barOfAClampPassesBehindTheShelfOnlyWhereThereIsNoBack() {
    assertEquals(List.of(), bare(edged(false)));
    assertEquals(List.of("strip"), bare(edged(true)));
  }

  /** Three stiles with one face go on a case with a back: the bar reaches the outer two alone. */
  @Test
  void caulPressesTheMiddleBetweenWhatClampsReach() {
    TestPiece piece = new TestPiece();
    piece.part("left", "Left", "A", "ash", 0, 18, 20, 320, 0, 1000);
    piece.part("right", "Right", "B", "ash", 618, 636, 20, 320, 0, 1000);
    piece.part("middle", "Middle", "C", "ash", 309, 327, 20, 314, 0, 1000);
    piece.part("back", "Back", "D", "ash", 18, 618, 314, 320, 0, 1000);
    for (String side : List.of("left", "middle", "right")) {
      double from = side.equals("left") ? 0 : side.equals("right") ? 596 : 298;
      piece.part(side + "-stile", "Stile", side, "ash", from, from + 40, 0, 20, 0, 1000);
      piece.fasten("butt", side + "-stile", Face.BACK, side, true, "", 0);
    }
    Piece made = piece.piece();
    List<Joint> joints =
        made.joints().stream().filter(joint -> joint.first().endsWith("-stile")).toList();
    List<String> comes = joints.stream().map(Joint::first).toList();
    Clamping.Found found = Clamping.of(made.parts(), joints, comes);
    assertEquals(List.of(), found.bare());
    assertEquals(List.of("middle-stile"), found.cauled().stream().map(Joint::first).toList());
    assertEquals(
        List.of("middle-stile"),
        Clamping.of(made.parts(), List.of(joints.get(1)), comes).bare().stream()
            .map(Joint::first)
            .toList());
  }

  private static List<String> bare(TestPiece piece) {
    return found(piece).stream()
        .flatMap(each -> each.bare().stream())
        .map(joint -> joint.first())
        .toList();
  }
}
