package storyrod.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.measure.Length;
import storyrod.measure.Rational;

class BoardFeetTest {
  // NHLA and trade rule: thickness by width by length in inches over 144. The first three are
  // published answers; the others were worked by hand.
  @ParameterizedTest
  @CsvSource({
    "1 in, 6 in, 96 in, 4, 1",
    "1 1/4 in, 6 in, 96 in, 5, 1",
    "1 in, 12 in, 12 in, 1, 1",
    "2 in, 8 in, 120 in, 40, 3",
    "1 in, 7 1/2 in, 100 in, 125, 24",
    "1 1/2 in, 5 1/4 in, 84 in, 147, 32"
  })
  void boardFeetAreExact(
      String thickness, String width, String length, long numerator, long denominator) {
    assertEquals(
        Rational.of(numerator, denominator),
        BoardFeet.of(Length.parse(length), Length.parse(width), Length.parse(thickness)));
  }

  // Trade rule, from memory: stock under an inch is counted as an inch.
  @Test
  void thinStockCountsAsAnInch() {
    assertEquals(
        Rational.of(4, 1), BoardFeet.of(Length.inches(96), Length.inches(6), Length.inch(3, 4)));
  }

  @Test
  void whatIsBoughtIsRoundedUpToATenth() {
    assertEquals(Rational.of(61, 10), BoardFeet.toBuy(Rational.of(5001, 1000), 20));
    assertEquals(Rational.of(6, 1), BoardFeet.toBuy(Rational.of(5, 1), 20));
  }
}
