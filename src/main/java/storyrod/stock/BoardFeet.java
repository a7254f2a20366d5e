package storyrod.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/** The trade's measure of hardwood: 144 cubic inches of rough board. */
public final class BoardFeet {
  private static final Rational CUBIC_INCHES = Rational.of(144, 1);

  private BoardFeet() {}

  /**
   * The exact board feet of a rough board: thickness by width by length in inches over 144. A board
   * thinner than an inch counts as one inch, which is common practice.
   */
  public static Rational of(Length length, Length width, Length thickness) {
    return inches(thickness.max(Length.inches(1)))
        .times(inches(width))
        .times(inches(length))
        .dividedBy(CUBIC_INCHES);
  }

  /** Board feet with so many per cent added, rounded up to a tenth. */
  static Rational toBuy(Rational net, int wastePercent) {
    Rational tenths = net.times(Rational.of(100L + wastePercent, 10));
    BigDecimal whole =
        new BigDecimal(tenths.numerator())
            .divide(new BigDecimal(tenths.denominator()), 0, RoundingMode.CEILING);
    return Rational.of(whole).dividedBy(Rational.of(10, 1));
  }

  private static Rational inches(Length length) {
    return Rational.of(length.ticks(), Length.TICKS_PER_INCH);
  }
}
