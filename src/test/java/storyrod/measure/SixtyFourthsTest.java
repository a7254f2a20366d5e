package storyrod.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * All 64ths of an inch against a table worked by hand: 1/64 in is 0.015625 in by halving an inch
 * six times, each line adds that to the one before. An inch is 25.4 mm (ISO 31-1 and the
 * international yard and pound agreement of 1959), so 1/64 in is 0.396875 mm.
 */
class SixtyFourthsTest {
  private static final List<String> TABLE =
      """
      1/64   0.015625
      1/32   0.03125
      3/64   0.046875
      1/16   0.0625
      5/64   0.078125
      3/32   0.09375
      7/64   0.109375
      1/8    0.125
      9/64   0.140625
      5/32   0.15625
      11/64  0.171875
      3/16   0.1875
      13/64  0.203125
      7/32   0.21875
      15/64  0.234375
      1/4    0.25
      17/64  0.265625
      9/32   0.28125
      19/64  0.296875
      5/16   0.3125
      21/64  0.328125
      11/32  0.34375
      23/64  0.359375
      3/8    0.375
      25/64  0.390625
      13/32  0.40625
      27/64  0.421875
      7/16   0.4375
      29/64  0.453125
      15/32  0.46875
      31/64  0.484375
      1/2    0.5
      33/64  0.515625
      17/32  0.53125
      35/64  0.546875
      9/16   0.5625
      37/64  0.578125
      19/32  0.59375
      39/64  0.609375
      5/8    0.625
      41/64  0.640625
      21/32  0.65625
      43/64  0.671875
      11/16  0.6875
      45/64  0.703125
      23/32  0.71875
      47/64  0.734375
      3/4    0.75
      49/64  0.765625
      25/32  0.78125
      51/64  0.796875
      13/16  0.8125
      53/64  0.828125
      27/32  0.84375
      55/64  0.859375
      7/8    0.875
      57/64  0.890625
      29/32  0.90625
      59/64  0.921875
      15/16  0.9375
      61/64  0.953125
      31/32  0.96875
      63/64  0.984375
      1      1
      """
          .lines()
          .toList();

  @Test
  void tableIsWhole() {
    assertEquals(64, TABLE.size());
  }

  @Test
  void fractionReadsAsItsDecimal() {
    for (String line : TABLE) {
      String[] words = line.split(" +");
      assertEquals(Length.parse(words[1] + " in"), Length.parse(words[0] + " in"), line);
      BigDecimal inches = Length.parse(words[0] + " in").toMmExact().divide(new BigDecimal("25.4"));
      assertEquals(0, new BigDecimal(words[1]).compareTo(inches), line);
    }
  }

  @Test
  void decimalPrintsAsItsReducedFraction() {
    LengthFormat format = new LengthFormat(Unit.INCH, 64);
    for (String line : TABLE) {
      String[] words = line.split(" +");
      assertEquals(words[0], format.format(Length.parse(words[1] + " in")), line);
    }
  }

  @Test
  void eachStepIsTheSameInMillimetres() {
    for (int i = 1; i <= TABLE.size(); i++) {
      BigDecimal mm = new BigDecimal("0.396875").multiply(BigDecimal.valueOf(i));
      Length length = Length.parse(TABLE.get(i - 1).split(" +")[0] + " in");
      assertEquals(0, mm.compareTo(length.toMmExact()), TABLE.get(i - 1));
    }
  }
}
