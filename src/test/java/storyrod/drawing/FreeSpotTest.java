package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Region;

/** Dots of leaders on faces with holes, at full size. */
class FreeSpotTest {
  private static final Fit FULL = new Fit(1, 0, 0);
  private static final double MIDDLE = 50;
  private static final double RADIUS = 0.5;

  /** A face 100 wide, with a row of holes 20 apart along its middle. */
  private static At dot(double high, double... holes) {
    List<At> ring = List.of(new At(0, 0), new At(100, 0), new At(100, high), new At(0, high));
    Region face = new Region(Vector3D.of(0, 0, 1), List.of(ring), 100 * high);
    List<List<At>> mouths =
        DoubleStream.of(holes).mapToObj(x -> mouth(new At(x, high / 2))).toList();
    return new FreeSpot(face, mouths).offRows(FULL);
  }

  private static List<At> mouth(At centre) {
    return IntStream.range(0, 16)
        .mapToDouble(i -> Math.PI * i / 8)
        .mapToObj(a -> centre.plus(RADIUS * StrictMath.cos(a), RADIUS * StrictMath.sin(a)))
        .toList();
  }

  /** Between two holes it would be taken for a third. */
  @Test
  void besideARowItIsOffItsLine() {
    At dot = dot(30, 40, 60);
    assertTrue(Math.abs(dot.y() - 15) > 2.4, dot::toString);
    assertEquals(MIDDLE, dot.x(), 20);
  }

  /** A step on from the last hole it would be taken for the next. */
  @Test
  void itIsNotWhereARowWouldHaveItsNext() {
    At dot = dot(30, 60, 80);
    assertTrue(dot.distance(new At(40, 15)) > 2.4, dot::toString);
    assertTrue(dot.distance(new At(60, 15)) > 20, dot::toString);
  }

  /** From the left its leader then crosses no hole. */
  @Test
  void whereTheFaceIsNarrowItIsBeforeTheRow() {
    At dot = dot(5, 30, 50, 70);
    assertTrue(dot.x() < 30 - RADIUS - 1.9, dot::toString);
  }

  @Test
  void withoutHolesItIsInTheMiddle() {
    assertEquals(new At(MIDDLE, 15), dot(30));
  }

  /** A row from end to end leaves no other place than between its holes. */
  @Test
  void amongHolesEverywhereItCoversNone() {
    double[] holes = {2, 26, 50, 74, 98};
    At dot = dot(5, holes);
    DoubleStream.of(holes)
        .mapToObj(x -> dot.distance(new At(x, 2.5)))
        .forEach(apart -> assertTrue(apart > RADIUS + Lowering.DOT_RADIUS, dot::toString));
  }
}
