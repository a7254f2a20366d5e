package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Boxes that touch are those of which no side lies past the other's. */
class BoxesTest {
  private final Random random = new Random(7);
  private final Boxes boxes = new Boxes();
  private final List<Bounds> all = new ArrayList<>();

  @Test
  void findsJustThoseThatTouch() {
    fill(200);
    for (int round = 0; round < 500; round++) {
      Bounds asked = box();
      assertEquals(expected(asked), found(asked));
    }
  }

  @Test
  void forgetsWhatIsNotKept() {
    fill(120);
    boxes.keep(50);
    all.subList(50, 120).clear();
    Bounds everywhere = new Bounds(-100, -100, 200, 200);
    assertEquals(IntStream.range(0, 50).boxed().toList(), found(everywhere));
    fill(30);
    assertEquals(IntStream.range(0, 80).boxed().toList(), found(everywhere));
  }

  @Test
  void touchesAtASide() {
    boxes.add(new Bounds(0, 0, 1, 1));
    assertEquals(List.of(0), found(new Bounds(1, 1, 2, 2)));
    assertFalse(boxes.anyTouching(new Bounds(1.001, 0, 2, 1), i -> true));
  }

  private void fill(int count) {
    for (int i = 0; i < count; i++) {
      all.add(box());
      boxes.add(all.getLast());
    }
  }

  private Bounds box() {
    double left = random.nextInt(90);
    double top = random.nextInt(90);
    return new Bounds(left, top, left + random.nextInt(12), top + random.nextInt(12));
  }

  private List<Integer> expected(Bounds asked) {
    return IntStream.range(0, all.size()).filter(i -> touch(all.get(i), asked)).boxed().toList();
  }

  private static boolean touch(Bounds one, Bounds other) {
    Bounds shared = one.within(other);
    return shared.width() >= 0 && shared.height() >= 0;
  }

  private List<Integer> found(Bounds asked) {
    List<Integer> found = new ArrayList<>();
    boxes.anyTouching(
        asked,
        i -> {
          found.add(i);
          return false;
        });
    return found;
  }
}
