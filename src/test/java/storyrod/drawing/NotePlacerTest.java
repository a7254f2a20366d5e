package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.NotePlacer.Terms;
import storyrod.drawing.NotePlaces.Aim;

/** Places that are judged once give every note the place that it gets when all is judged anew. */
class NotePlacerTest {
  private static final String FIRST = "groove for B, 6 wide, 5 deep";
  private static final String SECOND = "4× Ø 5, 12 deep, for dowels";
  private static final Terms TERMS = new Terms(7, 46);
  private final Random random = new Random(3);

  @Test
  void aNoteAfterAnotherStandsWhereItWouldIfThatWerePartOfTheDrawing() {
    int placed = 0;
    for (int round = 0; round < 150; round++) {
      List<Element> drawn = drawn();
      Aim first = new Aim(List.of(at(), at()), 0);
      Aim second = new Aim(List.of(at(), at(), at()), 1.5);
      Kept kept = new Kept(drawn, first, second);
      kept.place(kept.second);
      kept.takeAway();
      Kept anew = new Kept(drawn, first, second);
      assertEquals(anew.place(anew.first), kept.place(kept.first));
      OptionalDouble cost = anew.placer.place(SECOND, second, TERMS);
      assertEquals(cost, kept.place(kept.second));
      assertEquals(anew.paper.elements(), kept.paper.elements());
      placed += cost.isPresent() ? 1 : 0;
    }
    assertTrue(placed > 75, "too few to tell: " + placed);
  }

  /** A drawing with two notes whose places are kept. */
  private static final class Kept {
    private final Paper paper = new Paper();
    private final NotePlacer placer = new NotePlacer(paper, new Size(150, 170));
    private final Paper.State before;
    private final NotePlaces first;
    private final NotePlaces second;

    Kept(List<Element> drawn, Aim first, Aim second) {
      drawn.forEach(paper::add);
      this.before = paper.state();
      this.first = new NotePlaces(placer.ground(), first, FIRST, TERMS.widest());
      this.second = new NotePlaces(placer.ground(), second, SECOND, TERMS.widest());
    }

    OptionalDouble place(NotePlaces places) {
      return placer.place(places, TERMS);
    }

    void takeAway() {
      paper.backTo(before);
      placer.backTo(0);
    }
  }

  private List<Element> drawn() {
    return List.of(
        new Line(Role.VISIBLE, List.of(at(), at(), at())),
        new Line(Role.HIDDEN, List.of(at(), at())),
        new Text(TextStyle.DIMENSION, at(), Anchor.MIDDLE, true, "240"),
        new Text(TextStyle.DIMENSION, at(), Anchor.MIDDLE, false, "118"));
  }

  private At at() {
    return new At(10 + 100 * random.nextDouble(), 10 + 120 * random.nextDouble());
  }
}
