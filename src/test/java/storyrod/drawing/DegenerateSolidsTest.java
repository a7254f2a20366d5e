package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.drawing.SeenSolids.box;
import static storyrod.drawing.SeenSolids.seen;
import static storyrod.drawing.SeenSolids.total;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Region;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Face;
import storyrod.geometry.Solid;

/** Hidden lines of solids that are hardly any, or that lie in each other. */
final class DegenerateSolidsTest {
  private static final double CLOSE = 0.02;
  private static final double TICK = 1.0 / 16_000;

  private static Solid board() {
    return Solid.of(box(0, 100, 0, 20, 0, 200));
  }

  private static Solid bored(double x, double radius, double depth) {
    Vector3D mouth = Vector3D.of(x, 0, 100);
    return board().bored(List.of(new Cylinder(mouth, Vector3D.of(0, 1, 0), radius, depth)));
  }

  static Stream<Solid> odd() {
    return Stream.of(
        board().minus(List.of(box(0, 100, 0, 20, 0, 200))),
        board().minus(List.of(box(-9, 109, -9, 29, -9, 209))),
        board().minus(List.of(box(0, 100, 0, 20, 0, 200 - TICK))),
        board().minus(List.of(box(0, 100, 0, 20, 80, 120))),
        board().minus(List.of(box(TICK, 100 - TICK, 0, 20, TICK, 200 - TICK))),
        board().minus(List.of(box(20, 80, 5, 15, 50, 150))),
        board().minus(List.of(box(0, 50, 0, 20, 0, 100), box(50, 100, 0, 20, 100, 200))),
        board()
            .minus(List.of(board(), board()).stream().flatMap(s -> s.bounds().stream()).toList()),
        Solid.of(box(0, 0.01, 0, 0.01, 0, 0.01)),
        bored(0, 4, 10),
        bored(4, 4, 10),
        bored(100, 4, 20),
        bored(50, 50, 20),
        bored(50, 300, 20),
        bored(50, 0.01, 0.01));
  }

  /** Every place is one, and no more of it is seen than the outline of the whole board holds. */
  @ParameterizedTest
  @MethodSource("odd")
  void isSeenFromEverySide(Solid odd) {
    List<View> views =
        Stream.concat(Stream.of(View.USUAL), Stream.of(Face.values()).map(View::at)).toList();
    for (View view : views) {
      List<Seen> seen = seen(view, odd, Solid.of(box(30, 70, 60, 80, 20, 180)));
      assertTrue(!seen.toString().matches("(?s).*(NaN|Infinity).*"), "a place that is none");
      double most = area(seen(view, board()));
      assertTrue(area(List.of(seen.getFirst())) <= most + CLOSE, "more than the whole board");
    }
  }

  private static double area(List<Seen> seen) {
    return seen.stream().flatMap(s -> s.regions().stream()).mapToDouble(Region::areaMm2).sum();
  }

  @Test
  void whatIsCutAwayLeavesNothingAndHidesNothing() {
    Solid gone = board().minus(List.of(box(0, 100, 0, 20, 0, 200)));
    List<Seen> seen = seen(gone, board());
    assertEquals(0, total(seen.getFirst().lines().visible()));
    assertEquals(area(seen(board())), area(List.of(seen.get(1))), CLOSE);
  }

  @Test
  void aSolidInsideAnotherIsHidden() {
    List<Seen> seen = seen(Solid.of(box(40, 60, 5, 15, 50, 150)), board());
    assertEquals(0, total(seen.getFirst().lines().visible()), CLOSE);
    assertEquals(0, area(List.of(seen.getFirst())), CLOSE);
    assertEquals(area(seen(board())), area(List.of(seen.get(1))), CLOSE);
  }

  /** Faces that touch each other are seen from nowhere; the rest is as of one thick board. */
  @Test
  void facesThatTouchAreNotDrawn() {
    double thick = area(seen(Solid.of(box(0, 100, 0, 40, 0, 200))));
    assertEquals(thick, area(seen(board(), Solid.of(box(0, 100, 20, 40, 0, 200)))), CLOSE);
    View front = View.at(Face.FRONT);
    Seen behind = seen(front, Solid.of(box(9, 91, 20, 40, 9, 191)), board()).getFirst();
    assertEquals(0, total(behind.lines().visible()), CLOSE);
    assertTrue(behind.regions().isEmpty());
  }

  /** Half of a bore at an edge is drawn as an opening of the edge, within the board's outline. */
  @Test
  void mouthAtTheEdgeStaysOnTheBoard() {
    View front = View.at(Face.FRONT);
    for (Seen each : seen(front, bored(0, 4, 10))) {
      for (At at : each.lines().mouths().stream().flatMap(List::stream).toList()) {
        assertTrue(at.x() >= -CLOSE, "off the board at " + at);
      }
    }
  }
}
