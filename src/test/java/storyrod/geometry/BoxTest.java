package storyrod.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import storyrod.measure.Length;

class BoxTest {
  private static Range mm(long from, long to) {
    return new Range(Length.mm(from), Length.mm(to));
  }

  private static final Box BOX = new Box(mm(0, 10), mm(5, 25), mm(-3, 3));

  @Test
  void itMovesAlongOneAxisAndKeepsItsSize() {
    assertEquals(new Box(mm(0, 10), mm(2, 22), mm(-3, 3)), BOX.moved(Axis.Y, Length.mm(-3)));
  }

  @Test
  void itMovesByAVectorOnEachAxisByItsOwnShare() {
    assertEquals(new Box(mm(4, 14), mm(5, 25), mm(-10, -4)), BOX.moved(Vector3D.of(4, 0, -7)));
  }
}
