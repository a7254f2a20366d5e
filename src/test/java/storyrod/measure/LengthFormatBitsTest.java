package storyrod.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LengthFormatBitsTest {
  private static final Length ELEVEN_SIXTY_FOURTHS = Length.inch(11, 64);

  @Test
  void drillsArePrintedToSixtyFourthsWhereLengthsAreNot() {
    LengthFormat lengths = new LengthFormat(Unit.INCH, 32);
    assertEquals("3/16", lengths.format(ELEVEN_SIXTY_FOURTHS));
    assertEquals("11/64", lengths.forBits().format(ELEVEN_SIXTY_FOURTHS));
    assertEquals("1/4", lengths.forBits().format(Length.inch(1, 4)));
  }

  @Test
  void aFinerFormatStaysAsItIs() {
    LengthFormat fine = new LengthFormat(Unit.INCH, 128);
    assertEquals(fine, fine.forBits());
    LengthFormat metric = new LengthFormat(Unit.MM, 64);
    assertEquals(
        "4.5",
        metric.forBits().format(Length.mm(9).dividedBy(2, java.math.RoundingMode.UNNECESSARY)));
  }
}
