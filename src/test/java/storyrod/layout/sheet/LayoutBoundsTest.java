package storyrod.layout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.layout.Jobs.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.layout.Jobs;
import storyrod.layout.LayoutJob.Blank;

class LayoutBoundsTest {
  @Test
  void partsOverHalfBothWaysNeedASheetEach() {
    List<Blank> parts = Collections.nCopies(5, part(501, 251, true));
    assertEquals(5, bound(0, parts));
    assertEquals(2, bounds(0, parts).byArea());
  }

  @Test
  void partsOfExactlyHalfShareASheet() {
    assertEquals(2, bound(0, Collections.nCopies(8, part(500, 250, false))));
  }

  @Test
  void thirdsThatAreALittleTooLongFitOnlyTwice() {
    // Three lengths of 334 need 1002; so two columns of one part each as high as the sheet.
    assertEquals(3, bound(0, Collections.nCopies(6, part(334, 500, false))));
    assertEquals(2, bound(0, Collections.nCopies(6, part(333, 500, false))));
  }

  @Test
  void aPartThatMayTurnIsCountedInItsSmallerPosition() {
    // Lying they are over half the width; turned, three stand side by side.
    List<Blank> lying = Collections.nCopies(3, part(480, 320, false));
    List<Blank> turnable = Collections.nCopies(3, part(480, 320, true));
    assertEquals(2, bound(0, lying));
    assertEquals(1, bound(0, turnable));
  }

  @Test
  void kerfCountsInTheBound() {
    List<Blank> halves = Collections.nCopies(2, part(500, 500, false));
    assertEquals(1, bound(0, halves));
    assertEquals(2, bound(0.5, halves));
  }

  @Test
  void noFunctionLetsMoreFitThanFitted() {
    Random random = new Random(5);
    for (int i = 0; i < 300; i++) {
      long capacity = 20 + random.nextInt(200);
      long[] sizes = thatFit(capacity, random);
      for (DualFeasible each : DualFeasible.forSizes(capacity, sizes)) {
        long sum = java.util.Arrays.stream(each.apply(sizes)).sum();
        assertTrue(sum <= each.capacity(), "sizes " + java.util.Arrays.toString(sizes));
      }
    }
  }

  private static long[] thatFit(long capacity, Random random) {
    List<Long> sizes = new ArrayList<>();
    long left = capacity;
    while (left > 0) {
      long size = 1 + random.nextInt((int) Math.min(left, capacity * 2 / 3));
      sizes.add(size);
      left -= size;
    }
    return sizes.stream().mapToLong(Long::longValue).toArray();
  }

  private static long bound(double kerf, List<Blank> parts) {
    return bounds(kerf, parts).best();
  }

  private static LayoutBounds bounds(double kerf, List<Blank> parts) {
    return new LayoutBounds(new Enlarged(Jobs.job(kerf, Jobs.sheet(1000, 500, 0), parts)));
  }
}
