package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.drawing.SeenSolids.box;
import static storyrod.drawing.SeenSolids.seen;
import static storyrod.drawing.SeenSolids.total;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Solid;

final class HiddenLinesTest {
  private static final double CLOSE = 0.02;

  /**
   * Isometric projection, ISO 5456-3 (values from memory): the axes of x and y lie at 30 degrees to
   * the horizontal, z upright, all shortened by the root of 2/3.
   */
  @Test
  void isometricAxesLieAtThirtyDegreesAndShortenAlike() {
    double shortened = Math.sqrt(2.0 / 3);
    assertAt(shortened * Math.sqrt(3) / 2, -shortened / 2, Vector3D.of(0, 1, 0));
    assertAt(shortened * Math.sqrt(3) / 2, shortened / 2, Vector3D.of(1, 0, 0));
    assertAt(0, -shortened, Vector3D.of(0, 0, 1));
  }

  private static void assertAt(double x, double y, Vector3D point) {
    At at = View.USUAL.project(point);
    assertEquals(x, at.x(), 1e-12, "x of " + point);
    assertEquals(y, at.y(), 1e-12, "y of " + point);
  }

  @Test
  void cubeShowsNineEdgesAndHidesThree() {
    Seen cube = seen(Solid.of(box(0, 100, 0, 100, 0, 100))).getFirst();
    assertEquals(9, cube.lines().visible().size());
    assertEquals(9 * 100 * Math.sqrt(2.0 / 3), total(cube.lines().visible()), CLOSE);
    assertEquals(3, cube.regions().size());
  }

  @Test
  void straightViewHidesTheGrooveAtTheBack() {
    Solid board = Solid.of(box(0, 100, 0, 18, 0, 200)).minus(List.of(box(0, 100, 9, 18, 50, 68)));
    Seen front = seen(View.at(storyrod.geometry.Face.FRONT), board).getFirst();
    assertEquals(600, total(front.lines().visible()), CLOSE);
    assertEquals(200, total(front.lines().hidden()), CLOSE);
  }

  @Test
  void flushNeighboursKeepTheirJointLineOnce() {
    List<Seen> seen =
        seen(
            View.at(storyrod.geometry.Face.FRONT),
            Solid.of(box(0, 100, 0, 18, 0, 50)),
            Solid.of(box(100, 200, 0, 18, 0, 50)));
    assertEquals(300, total(seen.get(0).lines().visible()), CLOSE);
    assertEquals(250, total(seen.get(1).lines().visible()), CLOSE);
  }

  @Test
  void lineIsNotBrokenWhereAFaceTouchesIt() {
    List<Seen> seen =
        seen(Solid.of(box(0, 300, 0, 100, 0, 18)), Solid.of(box(100, 200, 100, 118, 0, 18)));
    long pieces = seen.getFirst().lines().visible().stream().filter(s -> s.length() > 200).count();
    assertEquals(3, pieces, "the long edges that can be seen are whole");
  }

  @Test
  void edgeBehindTheSeamOfTwoBoardsIsHidden() {
    Solid left = Solid.of(box(0, 100, 0, 18, 0, 100));
    Solid right = Solid.of(box(100, 200, 0, 18, 0, 100));
    Solid behind = Solid.of(box(100, 150, 50, 60, 20, 80));
    List<Seen> seen = seen(View.at(storyrod.geometry.Face.FRONT), behind, left, right);
    assertEquals(0, total(seen.getFirst().lines().visible()), CLOSE);
    assertTrue(seen.getFirst().regions().isEmpty());
  }

  @Test
  void mouthOfABoreIsAnEllipseUnlessSomethingStandsBeforeIt() {
    Cylinder bore = new Cylinder(Vector3D.of(50, 0, 50), Vector3D.of(0, 1, 0), 10, 15);
    Solid board = Solid.of(box(0, 100, 0, 18, 0, 100)).bored(List.of(bore));
    List<At> mouth = seen(board).getFirst().lines().mouths().getFirst();
    assertEquals(0, mouth.getFirst().distance(mouth.getLast()), 1e-9, "closed");
    At centre = View.USUAL.project(Vector3D.of(50, 0, 50));
    double longest = mouth.stream().mapToDouble(centre::distance).max().orElseThrow();
    assertEquals(10, longest, 0.1, "an ellipse keeps its circle's diameter as its long axis");
    Solid cover = Solid.of(box(0, 200, -80, -40, 0, 200));
    assertTrue(seen(board, cover).getFirst().lines().mouths().isEmpty());
  }

  @Test
  void slantedBoreGivesALongerMouth() {
    Vector3D slant = Vector3D.of(0, StrictMath.sin(Math.PI / 12), StrictMath.cos(Math.PI / 12));
    Cylinder bore = new Cylinder(Vector3D.of(50, 0, 50), slant, 4, 40);
    Solid board = Solid.of(box(0, 100, 0, 18, 0, 100)).bored(List.of(bore));
    List<At> mouth =
        seen(View.at(storyrod.geometry.Face.FRONT), board).getFirst().lines().mouths().getFirst();
    double high = mouth.stream().mapToDouble(At::y).max().orElseThrow();
    double low = mouth.stream().mapToDouble(At::y).min().orElseThrow();
    assertEquals(8 / StrictMath.sin(Math.PI / 12), high - low, 0.2);
  }
}
