package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Unit;
import storyrod.words.Words;

class TextsTest {
  private static Texts in(Unit unit) {
    return new Texts(new LengthFormat(unit, 32), Words.ENGLISH);
  }

  /** 424 board feet are a cubic metre, to the nearest (common tables). */
  @Test
  void boardsAreBoughtInTheUnitOfTheirTrade() {
    assertEquals("424.0", in(Unit.INCH).boardVolume(Rational.of(424, 1)));
    assertEquals("1.001", in(Unit.MM).boardVolume(Rational.of(424, 1)));
    assertEquals("0.014", in(Unit.MM).boardVolume(Rational.of(6, 1)));
  }

  @Test
  void metricShoppingListKnowsNoBoardFeet() {
    byte[] metric =
        new PlanSetWriter(Sample::words, Words.ENGLISH)
            .write(Sample.inches().in(Unit.MM).planSet())
            .get("plan-set.pdf");
    String text = PdfText.text(metric, 0);
    assertTrue(text.contains("Buy m³"), text);
    assertFalse(text.contains("board feet"), text);
  }
}
