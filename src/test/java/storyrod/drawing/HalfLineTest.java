package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.At;

/** A half-line misses only what no stretch of it meets. */
class HalfLineTest {
  private static final int TRIES = 20_000;
  private final Random random = new Random(5);

  @Test
  void missesNoLineThatAStretchOfItCrosses() {
    int crossed = 0;
    for (int i = 0; i < TRIES; i++) {
      HalfLine way = way();
      Paper.Stretch line = new Paper.Stretch(at(), at());
      Paper.Stretch leader = new Paper.Stretch(way.at(random.nextInt(8)), way.at(60));
      boolean crosses = leader.crosses(line);
      crossed += crosses ? 1 : 0;
      assertTrue(!crosses || way.mayMeet(List.of(line)).contains(line), line::toString);
    }
    assertTrue(crossed > TRIES / 20, "too few to tell: " + crossed);
  }

  @Test
  void missesNoTextThatAStretchOfItMeets() {
    int met = 0;
    for (int i = 0; i < TRIES; i++) {
      HalfLine way = way();
      At corner = at();
      PlacedText text =
          new PlacedText("", 1, corner.x(), corner.y(), corner.x() + 30, corner.y() + 4);
      boolean meets = text.meets(way.at(random.nextInt(8)), way.at(60));
      met += meets ? 1 : 0;
      assertTrue(!meets || way.mayMeet(text), text::toString);
    }
    assertTrue(met > TRIES / 20, "too few to tell: " + met);
  }

  @Test
  void missesWhatLiesBehindOrBeside() {
    HalfLine way = new HalfLine(new At(10, 10), new At(1, 0));
    assertFalse(way.mayMeet(new Paper.Stretch(new At(5, 0), new At(5, 20))));
    assertFalse(way.mayMeet(new Paper.Stretch(new At(15, 12), new At(40, 11))));
    assertFalse(way.mayMeet(new PlacedText("", 1, 2, 8, 9, 12)));
    assertFalse(way.mayMeet(new PlacedText("", 1, 20, 11, 40, 15)));
    assertTrue(way.mayMeet(new Paper.Stretch(new At(15, 0), new At(15, 10))));
  }

  private HalfLine way() {
    double angle = 2 * Math.PI * random.nextInt(36) / 36;
    return new HalfLine(at(), new At(StrictMath.cos(angle), StrictMath.sin(angle)));
  }

  /** On a grid, so that some lines begin or end right on the half-line. */
  private At at() {
    return new At(random.nextInt(100), random.nextInt(100));
  }
}
