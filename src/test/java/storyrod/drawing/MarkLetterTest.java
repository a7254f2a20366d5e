package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;

/** A letter stands on its face or beside it, and never across its outline. */
class MarkLetterTest {
  private static final MarkLetter LETTER = new MarkLetter("AM");

  private static Bounds text(List<Element> elements) {
    return elements.stream()
        .filter(Text.class::isInstance)
        .map(each -> Bounds.of(PlacedText.of((Text) each)))
        .findFirst()
        .orElseThrow();
  }

  private static Bounds face(double width, double height) {
    return new Bounds(10, 20, 10 + width, 20 + height);
  }

  @Test
  void onAFaceItLiesWithinIt() {
    for (double width = 0.5; width < 30; width += 0.5) {
      for (double height = 0.5; height < 30; height += 0.5) {
        Bounds face = face(width, height);
        LETTER.on(face).ifPresent(each -> assertTrue(text(each).isIn(face), face.toString()));
      }
    }
  }

  @Test
  void aFaceThatIsTooSmallHasItBeside() {
    assertTrue(LETTER.on(face(8, 0.01)).isEmpty());
    assertTrue(LETTER.on(face(1, 30)).isEmpty());
    assertTrue(text(LETTER.beside(face(8, 0.01))).left() > 18);
    assertFalse(LETTER.on(face(20, 6)).isEmpty());
    assertFalse(LETTER.on(face(9, 12)).isEmpty());
  }

  @Test
  void besideAFaceItTakesNoMoreThanItSays() {
    double right = text(LETTER.beside(face(8, 5))).right();
    assertTrue(right <= 18 + LETTER.besideMm(), "to " + right);
  }
}
