package storyrod.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.measure.Length;

class VoidsTest {
  private static final Length CUBE = Length.mm(40);

  /** Six boards 20 mm thick round a space of 300 x 200 x 100 mm. */
  private static List<Box> chest() {
    return List.of(
        box(0, 340, 0, 240, 0, 20),
        box(0, 340, 0, 240, 120, 140),
        box(0, 20, 0, 240, 20, 120),
        box(320, 340, 0, 240, 20, 120),
        box(20, 320, 0, 20, 20, 120),
        box(20, 320, 220, 240, 20, 120));
  }

  @Test
  void theInsideOfAClosedChestIsFoundWithItsSize() {
    assertEquals(List.of(box(20, 320, 20, 220, 20, 120)), Voids.among(chest(), CUBE));
  }

  @Test
  void aGapThatTheCubeDoesNotPassKeepsItClosed() {
    assertEquals(1, Voids.among(withFrontFrom(59), CUBE).size());
    assertEquals(0, Voids.among(withFrontFrom(61), CUBE).size());
  }

  /** The chest with a front that starts so high: the gap under it is 20 mm less. */
  private static List<Box> withFrontFrom(long z) {
    List<Box> open = new ArrayList<>(chest());
    open.set(4, box(20, 320, 0, 20, z, 120));
    return open;
  }

  @Test
  void aDivisionMakesTwoOfOne() {
    List<Box> divided = new ArrayList<>(chest());
    divided.add(box(100, 120, 20, 220, 20, 120));
    assertEquals(
        List.of(box(20, 100, 20, 220, 20, 120), box(120, 320, 20, 220, 20, 120)),
        Voids.among(divided, CUBE));
  }

  @Test
  void whatStandsInASpaceLeavesTheLargestBoxBesideIt() {
    List<Box> filled = new ArrayList<>(chest());
    filled.add(box(20, 120, 20, 120, 20, 120));
    assertEquals(List.of(box(120, 320, 20, 220, 20, 120)), Voids.among(filled, CUBE));
  }

  @Test
  void nothingIsClosedAmongNothing() {
    assertEquals(List.of(), Voids.among(List.of(), CUBE));
    assertEquals(List.of(), Voids.among(List.of(box(0, 300, 0, 300, 0, 300)), CUBE));
  }

  private static Box box(long x1, long x2, long y1, long y2, long z1, long z2) {
    return new Box(range(x1, x2), range(y1, y2), range(z1, z2));
  }

  private static Range range(long from, long to) {
    return new Range(Length.mm(from), Length.mm(to));
  }
}
