package storyrod.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Sines and tangents against a four-figure table as it stands in any school book (from memory). */
class AngleTest {
  @Test
  void sineCosineAndTangentAreThoseOfTheTable() {
    assertEquals(0.1392, Angle.degrees(8).sin(), 5e-5);
    assertEquals(0.9903, Angle.degrees(8).cos(), 5e-5);
    assertEquals(0.1405, Angle.degrees(8).tan(), 5e-5);
    assertEquals(0.5, Angle.degrees(30).sin(), 1e-12);
    assertEquals(1, Angle.degrees(45).tan(), 1e-12);
  }

  @Test
  void fractionsOfADegreeAreExact() {
    assertEquals(new Angle(7_500_000), Angle.degrees(Rational.of(15, 2)));
    assertEquals(new Angle(82_500_000), Angle.degrees(Rational.of(15, 2)).complement());
  }

  /** A rise of 3 over a run of 4: 36.87 degrees, as every carpenter's 3-4-5 has it. */
  @Test
  void slopeOfThreeToFourIsThatOfTheThreeFourFiveTriangle() {
    Angle angle = Angle.of(Length.inches(3), Length.inches(4));
    assertEquals("36.87°", angle.toString());
    assertEquals(0.6, angle.sin(), 1e-7);
  }

  @Test
  void wholeDegreesPrintWithoutDecimals() {
    assertEquals("8°", Angle.degrees(8).toString());
    assertEquals("-7.5°", new Angle(-7_500_000).toString());
    assertEquals("0°", Angle.ZERO.toString());
  }
}
