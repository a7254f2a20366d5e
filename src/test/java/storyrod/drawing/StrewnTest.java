package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;

/** Strewn points tell of most taken places that they are, and of no free one. */
class StrewnTest {
  private static final int PLACES = 4000;
  private final Random random = new Random(11);
  private final Paper paper = new Paper();

  @Test
  void callsNoFreePlaceTaken() {
    for (int round = 0; round < 30; round++) {
      draw();
      Strewn strewn = paper.layer(Paper.NOTHING, paper.state()).strewn();
      for (int i = 0; i < PLACES; i++) {
        PlacedText room = room();
        assertFalse(strewn.anyIn(room) && paper.isFree(room), () -> "free: " + room);
      }
    }
  }

  @Test
  void knowsMostTakenPlaces() {
    draw();
    Strewn strewn = paper.layer(Paper.NOTHING, paper.state()).strewn();
    int taken = 0;
    int known = 0;
    for (int i = 0; i < PLACES; i++) {
      PlacedText room = room();
      taken += paper.isFree(room) ? 0 : 1;
      known += strewn.anyIn(room) ? 1 : 0;
    }
    assertTrue(known > 0.7 * taken, known + " of " + taken);
  }

  @Test
  void nothingIsTakenOnEmptyPaper() {
    assertFalse(paper.layer(Paper.NOTHING, paper.state()).strewn().anyIn(room()));
  }

  private void draw() {
    for (int i = 0; i < 6; i++) {
      paper.add(new Line(Role.VISIBLE, List.of(at(), at())));
      paper.add(new Text(TextStyle.NOTE, at(), Anchor.START, i % 2 == 0, "a groove"));
    }
  }

  private At at() {
    return new At(200 * random.nextDouble() - 30, 260 * random.nextDouble() - 70);
  }

  private PlacedText room() {
    At at = at();
    double width = 8 + 40 * random.nextDouble();
    double height = 6 + 10 * random.nextDouble();
    return new PlacedText("", 1, at.x(), at.y(), at.x() + width, at.y() + height);
  }
}
