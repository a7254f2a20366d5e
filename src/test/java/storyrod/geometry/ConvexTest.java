package storyrod.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Convex.Brick;
import storyrod.geometry.Convex.Rod;

/** Bodies that meet or just do not, worked out by hand. */
class ConvexTest {
  private static final Brick BOX = new Brick(Vector3D.ZERO, Vector3D.of(10, 10, 10));

  private static Rod rod(Vector3D mouth, Vector3D direction) {
    return new Rod(new Cylinder(mouth, direction.normalize(), 3, 20));
  }

  /** The rod's axis passes the edge at x = 10, y = 10 diagonally: 3 mm off is just clear. */
  @Test
  void aRodBesideTheEdgeOfABoxIsClearWhereABoxRoundItIsNot() {
    Vector3D up = Vector3D.of(0, 0, 1);
    double off = 3 / Math.sqrt(2);
    assertTrue(Convex.meet(List.of(BOX, rod(Vector3D.of(10 + off - 0.01, 10 + off, 0), up))));
    Rod clear = rod(Vector3D.of(10 + off + 0.01, 10 + off, 0), up);
    assertFalse(Convex.meet(List.of(BOX, clear)));
    assertTrue(BOX.overlaps(clear.around()));
  }

  @Test
  void aRodEndsFlat() {
    Vector3D way = Vector3D.of(-1, 0, 0);
    assertTrue(Convex.meet(List.of(BOX, rod(Vector3D.of(29.99, 12.9, 5), way))));
    assertFalse(Convex.meet(List.of(BOX, rod(Vector3D.of(30.01, 5, 5), way))));
  }

  /** Two rods of radius 3 that cross at a right angle are clear once their axes are 6 mm apart. */
  @Test
  void rodsThatCrossAreMeasuredFromAxisToAxis() {
    Rod one = rod(Vector3D.of(-10, 0, 0), Vector3D.of(1, 0, 0));
    assertTrue(Convex.meet(List.of(one, rod(Vector3D.of(0, -10, 5.99), Vector3D.of(0, 1, 0)))));
    assertFalse(Convex.meet(List.of(one, rod(Vector3D.of(0, -10, 6.01), Vector3D.of(0, 1, 0)))));
  }

  /** Along 15°, as a pocket hole: after 20 mm the axis is 20 · sin 15° = 5.176 mm lower. */
  @Test
  void aSlantedRodIsFollowed() {
    double angle = Math.toRadians(15);
    Rod rod = rod(Vector3D.of(-19, 5, 18), Vector3D.of(Math.cos(angle), 0, -Math.sin(angle)));
    double lowest = 18 - 20 * Math.sin(angle) - 3 * Math.cos(angle);
    assertEquals(lowest, rod.around().low().getZ(), 1e-9);
    assertFalse(Convex.meet(List.of(BOX, rod)));
    assertTrue(Convex.meet(List.of(BOX, rod(Vector3D.of(-15, 5, 14), rod.bore().direction()))));
  }

  @Test
  void aBodyThatIsShrunkAwayMeetsNothing() {
    assertTrue(BOX.shrunk(5).isEmpty());
    assertFalse(Convex.meet(List.of(BOX.shrunk(5), BOX)));
    assertFalse(
        Convex.meet(List.of(BOX, rod(Vector3D.of(5, 5, 5), Vector3D.of(1, 0, 0)).shrunk(3))));
  }
}
