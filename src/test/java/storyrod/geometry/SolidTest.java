package storyrod.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import storyrod.measure.Length;

final class SolidTest {
  private static final double SMALL = 1e-3;

  static Box box(double x0, double x1, double y0, double y1, double z0, double z1) {
    return new Box(range(x0, x1), range(y0, y1), range(z0, z1));
  }

  private static Range range(double from, double to) {
    return new Range(Length.nearest(from), Length.nearest(to));
  }

  @Test
  void boxHasSixFacesAndItsVolume() {
    Solid solid = Solid.of(box(0, 400, 0, 18, 0, 600));
    assertEquals(6, solid.faces().size());
    assertEquals(400.0 * 18 * 600, solid.volumeMm3(), SMALL);
  }

  @Test
  void dadoMakesTenFacesAndNoSeams() {
    Solid solid = Solid.of(box(0, 400, 0, 18, 0, 600)).minus(List.of(box(0, 400, 9, 18, 100, 118)));
    assertEquals(List.of(4, 4, 4, 4, 4, 4, 4, 4, 8, 8), corners(solid));
    assertEquals(400.0 * (18 * 600 - 9 * 18), solid.volumeMm3(), SMALL);
  }

  @Test
  void cutoutThroughAFaceIsAnOpening() {
    Solid solid = Solid.of(box(0, 100, 0, 18, 0, 100)).minus(List.of(box(30, 70, 0, 18, 30, 70)));
    List<FlatFace> open = solid.faces().stream().filter(f -> !f.openings().isEmpty()).toList();
    assertEquals(2, open.size());
    assertEquals(4, open.getFirst().openings().getFirst().size());
  }

  @Test
  void cutsThatMeetEdgeToEdgeMergeIntoOneFloor() {
    Solid solid =
        Solid.of(box(0, 400, 0, 18, 0, 600))
            .minus(List.of(box(0, 100, 9, 18, 100, 118), box(100, 400, 9, 18, 100, 118)));
    assertEquals(List.of(4, 4, 4, 4, 4, 4, 4, 4, 8, 8), corners(solid));
  }

  @Test
  void boundsElsewhereAreThoseOfTheSolidMovedThere() {
    Vector3D by = Vector3D.of(0.1, -1e3 / 3, 25.4 / 64);
    Solid slanted =
        Solid.of(box(0, 400, 0, 18, 0, 600))
            .trimmed(Vector3D.of(333.3, 0, 0), Vector3D.of(1, 2, 3).normalize());
    assertEquals(slanted.moved(by).bounds(), slanted.bounds(by));
    assertNotEquals(slanted.bounds(), slanted.bounds(by));
  }

  @Test
  void nothingIsLeftOfABoxCutByItself() {
    Box box = box(0, 40, 0, 18, 0, 60);
    assertTrue(Solid.of(box).minus(List.of(box)).isEmpty());
  }

  @Test
  void ringsTurnAgainstTheClockSeenFromOutside() {
    Solid solid =
        Solid.of(box(0, 400, 0, 18, 0, 600))
            .minus(List.of(box(30, 70, 0, 18, 30, 70), box(0, 400, 9, 18, 200, 218)))
            .trimmed(Vector3D.of(350, 0, 0), Vector3D.of(1, 0.2, 0.3));
    for (FlatFace face : solid.faces()) {
      assertTrue(turn(face.outer(), face.normal()) > 0, "outer ring of " + face);
      face.openings().forEach(o -> assertTrue(turn(o, face.normal()) < 0, "opening of " + face));
    }
  }

  @Test
  void sawLaysOpenTheFacesOnItsPlaneAlone() {
    Solid solid = Solid.of(box(0, 400, 0, 18, 0, 600)).minus(List.of(box(0, 400, 9, 18, 100, 118)));
    List<FlatFace> across = solid.sawn(Vector3D.of(150, 0, 0), Vector3D.of(1, 0, 0));
    assertEquals(List.of(8), across.stream().map(face -> face.outer().size()).toList());
    assertEquals(18 * 600 - 9 * 18, area(across.getFirst()), SMALL);
    List<FlatFace> throughGroove = solid.sawn(Vector3D.of(0, 12, 0), Vector3D.of(0, 1, 0));
    assertEquals(2, throughGroove.size());
    assertEquals(List.of(), solid.sawn(Vector3D.of(0, 0, 700), Vector3D.of(0, 0, 1)));
  }

  @Test
  void slopedCutTakesAWedge() {
    Solid wedge =
        Solid.of(box(0, 100, 0, 20, 0, 100)).trimmed(Vector3D.of(0, 0, 0), Vector3D.of(-1, 0, 1));
    assertEquals(100.0 * 20 * 100 / 2, wedge.volumeMm3(), SMALL);
    assertEquals(List.of(3, 3, 4, 4, 4), corners(wedge));
  }

  @Test
  void faceAreasCloseTheBodyAndGiveItsVolume() {
    Random random = new Random(7);
    for (int i = 0; i < 20; i++) {
      Solid solid = Solid.of(box(0, 300, 0, 30, 0, 200)).minus(randomBoxes(random, 8));
      Vector3D sum = Vector3D.ZERO;
      double volume = 0;
      for (FlatFace face : solid.faces()) {
        double area = area(face);
        sum = sum.add(face.normal().multiply(area));
        volume += area * face.normal().dot(face.outer().getFirst()) / 3;
      }
      assertEquals(0, sum.norm(), 0.1);
      assertEquals(solid.volumeMm3(), volume, 1);
    }
  }

  @Test
  void volumeAfterRandomCutsIsThatOfAGridCount() {
    Random random = new Random(11);
    for (int i = 0; i < 10; i++) {
      List<Box> cuts = randomBoxes(random, 10);
      Solid solid = Solid.of(box(0, 300, 0, 30, 0, 200)).minus(cuts);
      assertEquals(countedCells(cuts) * 1000.0, solid.volumeMm3(), 1e-2);
    }
  }

  /** Counts 10 mm cells, all cuts being on that grid. */
  private static long countedCells(List<Box> cuts) {
    return IntStream.range(0, 30 * 3 * 20)
        .filter(i -> cuts.stream().noneMatch(c -> has(c, i)))
        .count();
  }

  private static boolean has(Box cut, int cell) {
    return cut.x().contains(Length.mm(cell % 30 * 10 + 5))
        && cut.y().contains(Length.mm(cell / 30 % 3 * 10 + 5))
        && cut.z().contains(Length.mm(cell / 90 * 10 + 5));
  }

  private static List<Box> randomBoxes(Random random, int count) {
    List<Box> boxes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int x = random.nextInt(29);
      int y = random.nextInt(3);
      int z = random.nextInt(19);
      boxes.add(
          box(
              10 * x,
              10 * (x + 1 + random.nextInt(30 - x)),
              10 * y,
              10 * (y + 1),
              10 * z,
              10 * (z + 1 + random.nextInt(Math.min(20 - z, 3)))));
    }
    return boxes;
  }

  @Test
  void straightBoreTakesItsCylinder() {
    Cylinder bore = new Cylinder(Vector3D.of(50, 0, 50), Vector3D.of(0, 1, 0), 4, 10);
    Solid solid = Solid.of(box(0, 100, 0, 18, 0, 100)).bored(List.of(bore));
    assertEquals(100 * 18 * 100 - Math.PI * 16 * 10, solid.volumeMm3(), SMALL);
  }

  @Test
  void boreInThePlaneOfAFaceFurtherAlongTakesItsWood() {
    Cylinder bore = new Cylinder(Vector3D.of(0, 9, 10), Vector3D.of(1, 0, 0), 2, 20);
    for (Vector3D side : List.of(Vector3D.ZERO, Vector3D.of(0, 0, 10))) {
      Solid notch = Solid.of(box(90, 100, 0, 18, 0, 10)).moved(side);
      Solid solid = Solid.of(box(0, 100, 0, 18, 0, 20)).minus(notch).bored(List.of(bore));
      double wood = 100 * 18 * 20 - 10 * 18 * 10;
      assertEquals(wood - Math.PI * 4 * 20, solid.volumeMm3(), SMALL, () -> "notch at " + side);
    }
  }

  @Test
  void boreThatRunsOutTakesOnlyWhatIsWood() {
    Cylinder bore = new Cylinder(Vector3D.of(50, 0, 50), Vector3D.of(0, 1, 0), 4, 30);
    Solid solid =
        Solid.of(box(0, 100, 0, 18, 0, 100))
            .minus(List.of(box(0, 100, 6, 9, 0, 100)))
            .bored(List.of(bore));
    assertEquals(100 * 15 * 100 - Math.PI * 16 * 15, solid.volumeMm3(), SMALL);
  }

  @Test
  void slantedThroughBoreTakesItsSlantedLength() {
    Vector3D direction = Vector3D.of(1, 1, 0).normalize();
    Cylinder bore = new Cylinder(Vector3D.of(40, 0, 50), direction, 4, 18 * Math.sqrt(2));
    Solid solid = Solid.of(box(0, 100, 0, 18, 0, 100)).bored(List.of(bore));
    assertEquals(100 * 18 * 100 - Math.PI * 16 * 18 * Math.sqrt(2), solid.volumeMm3(), SMALL);
  }

  @Test
  void steppedBoreCountsEachStretchOnceAtItsWidest() {
    Vector3D up = Vector3D.of(0, 1, 0);
    Cylinder wide = new Cylinder(Vector3D.of(50, 0, 50), up, 5, 6);
    Cylinder narrow = new Cylinder(Vector3D.of(50, 0, 50), up, 2, 18);
    Solid solid = Solid.of(box(0, 100, 0, 18, 0, 100)).bored(List.of(narrow, wide));
    double bored = Math.PI * (25 * 6 + 4 * 12);
    assertEquals(100 * 18 * 100 - bored, solid.volumeMm3(), SMALL);
  }

  @Test
  void solidsThatTouchShareNothing() {
    Solid one = Solid.of(box(0, 100, 0, 18, 0, 100));
    assertEquals(0, one.sharedVolumeMm3(Solid.of(box(100, 200, 0, 18, 0, 100))));
    assertEquals(0, one.sharedVolumeMm3(Solid.of(box(0, 100, 18, 36, 0, 100))));
  }

  @Test
  void tenonInItsMortiseSharesNothing() {
    Solid leg = Solid.of(box(0, 40, 0, 40, 0, 400)).minus(List.of(box(10, 40, 15, 25, 300, 350)));
    Solid rail = Solid.of(box(10, 300, 15, 25, 300, 350));
    assertEquals(0, leg.sharedVolumeMm3(rail), SMALL);
    assertEquals(
        2.0 * 10 * 50, leg.sharedVolumeMm3(Solid.of(box(8, 300, 15, 25, 300, 350))), SMALL);
  }

  @Test
  void movedSolidKeepsItsShape() {
    Vector3D by = Vector3D.of(12.5, -3, 700);
    Solid solid = Solid.of(box(0, 100, 0, 18, 0, 100)).minus(List.of(box(0, 100, 9, 18, 40, 58)));
    Solid moved = solid.moved(by);
    assertEquals(solid.volumeMm3(), moved.volumeMm3(), SMALL);
    assertEquals(corners(solid), corners(moved));
    Vector3D corner = solid.faces().getFirst().outer().getFirst();
    assertEquals(0, corner.add(by).distance(moved.faces().getFirst().outer().getFirst()), 1e-9);
  }

  private static List<Integer> corners(Solid solid) {
    return solid.faces().stream().map(face -> face.outer().size()).sorted().toList();
  }

  private static double turn(List<Vector3D> ring, Vector3D normal) {
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i < ring.size(); i++) {
      sum = sum.add(ring.get(i).cross(ring.get((i + 1) % ring.size())));
    }
    return sum.dot(normal) / 2;
  }

  private static double area(FlatFace face) {
    return turn(face.outer(), face.normal())
        + face.openings().stream().mapToDouble(ring -> turn(ring, face.normal())).sum();
  }
}
