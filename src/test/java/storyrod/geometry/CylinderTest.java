package storyrod.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** What a plane cuts of a bore, by the areas of elementary geometry. */
class CylinderTest {
  private static final Vector3D X = Vector3D.of(1, 0, 0);
  private static final Vector3D Z = Vector3D.of(0, 0, 1);

  /** 32 tangents take up a little more than the circle: 32 tan(pi / 32) instead of pi. */
  private static final double TANGENTS = 32 * Math.tan(Math.PI / 32);

  private static final Cylinder BORE = new Cylinder(Vector3D.ZERO, Z, 4, 20);

  @Test
  void acrossItIsARound() {
    assertEquals(TANGENTS * 16, area(BORE.sawn(Vector3D.of(0, 0, 7), Z)), 1e-9);
    assertEquals(TANGENTS * 16, area(BORE.sawn(Vector3D.of(0, 0, 20), Z)), 1e-9);
  }

  @Test
  void alongItIsARectangle() {
    assertEquals(8 * 20, area(BORE.sawn(Vector3D.ZERO, X)), 1e-9);
    assertEquals(6 * 20, area(BORE.sawn(Vector3D.of(Math.sqrt(7), 0, 0), X)), 1e-9);
  }

  @Test
  void aslantItIsAnEllipseAsLongAsTheSlantMakesIt() {
    Vector3D slanted = Vector3D.of(Math.sqrt(3) / 2, 0, 0.5);
    List<Vector3D> ring = BORE.sawn(Vector3D.of(0, 0, 10), slanted);
    assertEquals(TANGENTS * 16 / 0.5, area(ring), 1e-9);
    ring.forEach(at -> assertEquals(5, at.dot(slanted), 1e-9));
  }

  /** At 45° through the centre of its mouth, half of the ellipse is above it. */
  @Test
  void endsCutItOff() {
    Vector3D slanted = Vector3D.of(1, 0, 1).normalize();
    List<Vector3D> ring = BORE.sawn(Vector3D.ZERO, slanted);
    assertEquals(TANGENTS * 16 * Math.sqrt(2) / 2, area(ring), 1e-9);
    assertTrue(ring.stream().allMatch(at -> at.getZ() > -1e-9));
  }

  @Test
  void planeBesideItMeetsNothing() {
    assertEquals(List.of(), BORE.sawn(Vector3D.of(4, 0, 0), X));
    assertEquals(List.of(), BORE.sawn(Vector3D.of(0, 0, 20.1), Z));
    assertEquals(List.of(), BORE.sawn(Vector3D.of(0, 0, -0.1), Z));
  }

  private static double area(List<Vector3D> ring) {
    Vector3D about = ring.getFirst();
    Vector3D sum = Vector3D.ZERO;
    for (int i = 1; i + 1 < ring.size(); i++) {
      sum = sum.add(ring.get(i).subtract(about).cross(ring.get(i + 1).subtract(about)));
    }
    return sum.norm() / 2;
  }
}
