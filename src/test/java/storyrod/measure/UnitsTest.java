package storyrod.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** The inch is 25.4 mm exactly (NIST SP 811, appendix B; from memory, the agreement of 1959). */
class UnitsTest {
  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
  private static final LengthFormat INCHES = new LengthFormat(Unit.INCH, 32);
  private static final LengthFormat MILLIMETRES = new LengthFormat(Unit.MM, 32);

  @Test
  void everyInchIsToldInMillimetresToATenth() {
    LengthFormat mm = INCHES.shownIn(Units.MM);
    for (int each = 1; each <= 96 * 32; each++) {
      BigDecimal exact =
          new BigDecimal(each)
              .multiply(MM_PER_INCH)
              .divide(new BigDecimal(32))
              .setScale(1, RoundingMode.HALF_UP);
      String printed = mm.format(Length.inch(each, 32));
      assertEquals(0, exact.compareTo(new BigDecimal(printed)), () -> exact + " is " + printed);
    }
  }

  @Test
  void inchesFromMillimetresAreOffByHalfASixtyFourthAtMost() {
    LengthFormat inches = MILLIMETRES.shownIn(Units.INCH);
    Length half = Length.inch(1, 128);
    for (int mm = 1; mm <= 2500; mm++) {
      Length exact = Length.mm(mm);
      Length printed = Length.parse(inches.format(exact) + " in");
      assertTrue(!printed.minus(exact).abs().isLongerThan(half), exact + " is " + printed);
    }
  }

  @Test
  void theOtherUnitStandsInSquareBracketsBehindTheFirst() {
    Length length = Length.inch(93, 4);
    LengthFormat both = INCHES.shownIn(Units.BOTH);
    assertEquals("23 1/4 [590.6]", both.format(length));
    assertEquals("23 1/4 in [590.6 mm]", both.formatWithUnit(length));
    assertEquals("590 [23 15/64]", MILLIMETRES.shownIn(Units.BOTH).format(Length.mm(590)));
    assertEquals("23 1/4", both.alone().format(length));
  }

  /** The middle of 23/32 lies on a 64th; 3/4 over the cosine of 10 degrees on no fraction. */
  @Test
  void aDimensionIsRoundedOnlyWithASign() {
    assertEquals("19 27/64", INCHES.told(Length.inch(1243, 64)));
    assertEquals("19 13/32", INCHES.told(Length.inch(621, 32)));
    assertEquals("≈ 3/4", INCHES.told(Length.nearest(19.3439)));
    assertEquals("11", INCHES.told(Length.nearest(279.4004)));
    assertEquals("9.1", MILLIMETRES.told(Length.nearest(9.1)));
    assertEquals("≈ 3.2", MILLIMETRES.told(Length.inch(1, 8)));
    assertEquals("≈ 3/4 [19.3]", INCHES.shownIn(Units.BOTH).told(Length.nearest(19.3439)));
    assertEquals("19.3", INCHES.shownIn(Units.MM).told(Length.nearest(19.3439)));
  }

  @Test
  void theOwnUnitStaysAsItIs() {
    assertEquals(INCHES, INCHES.shownIn(Units.OWN));
    assertEquals(INCHES, INCHES.shownIn(Units.INCH));
    assertEquals(MILLIMETRES, MILLIMETRES.shownIn(Units.MM));
  }

  /** A quarter-inch bit is not sold as one of 6.4 mm. */
  @Test
  void bitsAreToldInTheUnitInWhichTheyAreMade() {
    LengthFormat bits = INCHES.shownIn(Units.MM).forBits();
    assertEquals("6.4 [1/4 in]", bits.format(Length.inch(1, 4)));
    assertEquals("6.4 mm [1/4 in]", bits.formatWithUnit(Length.inch(1, 4)));
    assertEquals("6.4", INCHES.shownIn(Units.MM).format(Length.inch(1, 4)));
  }

  /** 10 mm are 25.2 sixty-fourths: a size of wood and a bit of that size bear one name. */
  @Test
  void oneLengthHasOneNameInBrackets() {
    LengthFormat both = new LengthFormat(Unit.MM, 16).shownIn(Units.BOTH);
    assertEquals("10 mm [25/64 in]", both.formatWithUnit(Length.mm(10)));
    assertEquals("10 mm [25/64 in]", both.forBits().formatWithUnit(Length.mm(10)));
  }
}
