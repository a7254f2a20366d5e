package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** Small puzzles, known from toys and from the trade, of which the one answer is plain. */
class PuzzlesTest {
  private static TestPiece screwed(TestPiece piece, String first, String second) {
    return piece.fasten("screws", first, Face.TOP, second, false, "", 0);
  }

  private static TestPiece block(TestPiece piece, String name, double... fromTo) {
    return piece.part(name, name, name.toUpperCase(java.util.Locale.ROOT), "ash", fromTo);
  }

  private static Box box(double... fromTo) {
    return TestPiece.box(fromTo);
  }

  private static BuildPlan plan(TestPiece piece) {
    return Planner.plan(piece.piece(), new Diagnostics()).orElseThrow();
  }

  private static List<Step> fitting(TestPiece piece) {
    return plan(piece).steps().stream().filter(step -> step.verb() == Verb.FIT).toList();
  }

  private static List<String> order(TestPiece piece) {
    return fitting(piece).stream().flatMap(step -> step.newParts().stream()).toList();
  }

  /** A panel in the closed hollow of one frame has no way in, and the frame is named. */
  @Test
  void panelInAClosedHollowIsCaptured() {
    TestPiece piece = new TestPiece();
    block(piece, "frame", 0, 100, 0, 20, 0, 100).hollow("frame", box(10, 90, 5, 15, 10, 90));
    block(piece, "panel", 10, 90, 5, 15, 10, 90);
    screwed(piece, "panel", "frame");
    Diagnostics found = new Diagnostics();
    assertEquals(Optional.empty(), Planner.plan(piece.piece(), found));
    Diagnostic fault = found.sorted().getFirst();
    assertEquals("no-way-in", fault.code());
    assertTrue(fault.message().contains("`frame` and `panel`"), fault.message());
  }

  /** Where the frame comes in two halves, the panel goes in before the second. */
  @Test
  void panelIsLaidInBeforeTheSecondHalfOfItsFrame() {
    TestPiece piece = new TestPiece();
    block(piece, "left", 0, 50, 0, 20, 0, 100).hollow("left", box(10, 50, 5, 15, 10, 90));
    block(piece, "right", 50, 100, 0, 20, 0, 100).hollow("right", box(50, 90, 5, 15, 10, 90));
    block(piece, "panel", 10, 90, 5, 15, 10, 90);
    screwed(piece, "left", "right");
    List<String> order = order(piece);
    assertTrue(order.indexOf("panel") < 2, order::toString);
  }

  /** A bar with a wide foot runs into its slot up to the stop; the plug behind it comes last. */
  @Test
  void slidingDovetailWithAStopGoesInFromItsOpenEnd() {
    TestPiece piece = slidingBar();
    block(piece, "plug", -20, 0, 0, 40, 0, 30);
    screwed(piece, "plug", "bed");
    assertEquals(Optional.of(Face.RIGHT), fitting(slidingBar()).getLast().enters());
    assertEquals("plug", order(piece).getLast());
  }

  private static TestPiece slidingBar() {
    TestPiece piece = new TestPiece();
    block(piece, "bed", 0, 200, 0, 40, 0, 30)
        .hollow("bed", box(0, 160, 10, 30, 10, 20))
        .hollow("bed", box(0, 160, 15, 25, 20, 30));
    block(piece, "bar", 0, 160, 10, 30, 10, 40)
        .hollow("bar", box(0, 160, 10, 15, 20, 30))
        .hollow("bar", box(0, 160, 25, 30, 20, 30));
    return screwed(piece, "bar", "bed");
  }

  /** Two crossed sticks and a key through both: the key goes in last, endways. */
  @Test
  void burrOfThreeIsLockedByItsKey() {
    TestPiece piece = new TestPiece();
    block(piece, "key", 0, 90, 10, 20, 15, 25);
    block(piece, "base", 0, 90, 0, 30, 0, 30)
        .hollow("base", box(0, 90, 10, 20, 15, 25))
        .hollow("base", box(30, 60, 0, 30, 10, 30));
    block(piece, "cross", 30, 60, -30, 60, 10, 40).hollow("cross", box(30, 60, 10, 20, 15, 25));
    screwed(screwed(piece, "base", "key"), "cross", "base");
    Step last = fitting(piece).getLast();
    assertEquals(List.of("key"), last.newParts());
    assertEquals(Axis.X, last.enters().orElseThrow().axis());
  }

  /** A box whose lip hangs over one end of its hollow, and a slab as long as the hollow's floor. */
  private static TestPiece lipped(double mouthFrom, double mouthTo) {
    TestPiece piece = new TestPiece();
    block(piece, "box", 0, 120, 0, 60, 0, 50)
        .hollow("box", box(10, 110, 10, 50, 10, 25))
        .hollow("box", box(mouthFrom, mouthTo, 10, 50, 25, 50));
    block(piece, "slab", 10, 80, 10, 50, 10, 25);
    return screwed(piece, "slab", "box");
  }

  /** The slab goes down through the mouth and then 25 mm to the left, under the lip. */
  @Test
  void slabUnderALipIsLetDownAndThenPushedAcross() {
    TestPiece piece = lipped(35, 110);
    Step last = fitting(piece).getLast();
    assertEquals(Optional.of(Face.LEFT), last.enters());
    assertEquals(Optional.of(new FirstMove(Face.BOTTOM, Length.mm(25))), last.firstMove());
  }

  /** Through a mouth that is shorter than the slab no two moves lead. */
  @Test
  void slabThatIsLongerThanTheMouthIsCaptured() {
    Diagnostics found = new Diagnostics();
    assertEquals(Optional.empty(), Planner.plan(lipped(45, 110).piece(), found));
    Diagnostic fault = found.sorted().getFirst();
    assertEquals("no-way-in", fault.code());
    assertTrue(fault.message().contains("`box` and `slab`"), fault.message());
  }

  /** What would close the mouth waits for the slab, and a straight slab needs one move only. */
  @Test
  void lidWaitsForTheSlabAndOneMoveIsNotMadeTwo() {
    TestPiece closed = lipped(35, 110);
    block(closed, "lid", 0, 120, 0, 60, 50, 60);
    assertEquals("lid", order(screwed(closed, "lid", "box")).getLast());
    assertEquals(Optional.empty(), fitting(lipped(10, 110)).getLast().firstMove());
  }
}
