package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import storyrod.geometry.Lazy;

class SightTest {
  private final AtomicInteger looks = new AtomicInteger();

  private Sight sight(double parts, double ways) {
    return new Sight(
        new Lazy<>(
            () -> {
              looks.incrementAndGet();
              return parts;
            }),
        ways);
  }

  @Test
  void partsAreNotLookedAtWhereTheirWaysAreTooLittle() {
    assertFalse(sight(1, 0.4).isMoreThan(1.5));
    assertFalse(sight(1, 0.5).isMoreThan(1.5));
    assertFalse(sight(1, 0.4).isAtLeast(1.5));
    assertEquals(0, looks.get());
  }

  @Test
  void bothCount() {
    assertTrue(sight(1, 0.5).isAtLeast(1.5));
    assertTrue(sight(0.75, 1).isMoreThan(1.5));
    assertFalse(sight(0.5, 1).isMoreThan(1.5));
    assertFalse(sight(0.25, 1).isAtLeast(1.5));
    assertEquals(1.25, sight(0.25, 1).score());
  }
}
