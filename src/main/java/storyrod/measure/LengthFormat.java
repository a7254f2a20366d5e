package storyrod.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How lengths are printed: inches with a reduced fraction, or millimetres with one decimal.
 *
 * <p>{@code new LengthFormat(Unit.INCH, 64).format(Length.inch(46, 64))} gives {@code 23/32}; 18.2
 * mm in millimetres gives {@code 18.2}. The unit itself is not printed.
 *
 * @param unit the unit of the printed figures
 * @param denominator the finest fraction of an inch, a power of two up to 128
 * @param decimalMark what stands before tenths of a millimetre
 */
public record LengthFormat(Unit unit, int denominator, char decimalMark) {
  private static final char POINT = '.';

  private static final int BIT_STEPS = 64;

  public LengthFormat {
    if (denominator < 1 || denominator > 128 || Integer.bitCount(denominator) != 1) {
      throw new IllegalArgumentException("no fraction of an inch: 1/" + denominator);
    }
  }

  /** A format with a decimal point. */
  public LengthFormat(Unit unit, int denominator) {
    this(unit, denominator, POINT);
  }

  /** The same in another unit. */
  public LengthFormat in(Unit other) {
    return new LengthFormat(other, denominator, decimalMark);
  }

  /** The same with another mark before tenths. */
  public LengthFormat withMark(char mark) {
    return new LengthFormat(unit, denominator, mark);
  }

  /** The format for the diameters of holes and drills, which come in steps of 1/64 in at least. */
  public LengthFormat forBits() {
    return new LengthFormat(unit, Math.max(denominator, BIT_STEPS), decimalMark);
  }

  /** The printed figures of a length, without its unit. */
  public String format(Length length) {
    return switch (unit) {
      case INCH -> inches(length);
      case MM -> millimetres(length);
    };
  }

  /** The printed figures with the unit behind them: {@code 3/4 in}, {@code 19 mm}. */
  public String formatWithUnit(Length length) {
    return format(length) + (unit == Unit.INCH ? " in" : " mm");
  }

  /** The length that is printed, which differs from the exact one by at most half a step. */
  public Length rounded(Length length) {
    return switch (unit) {
      case INCH -> step().times(steps(length));
      case MM -> tenths(length);
    };
  }

  /** What printed lengths are whole numbers of. */
  public Length step() {
    return switch (unit) {
      case INCH -> Length.inch(1, denominator);
      case MM -> new Length(Length.TICKS_PER_MM / 10);
    };
  }

  private long steps(Length length) {
    return length.dividedBy(step().ticks(), RoundingMode.HALF_UP).ticks();
  }

  private String inches(Length length) {
    long steps = steps(length.abs());
    String sign = length.isNegative() && steps > 0 ? "-" : "";
    long whole = steps / denominator;
    long rest = steps % denominator;
    if (rest == 0) {
      return sign + whole;
    }
    long divisor = Long.lowestOneBit(rest);
    String fraction = rest / divisor + "/" + denominator / divisor;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }

  private static Length tenths(Length length) {
    long tenth = Length.TICKS_PER_MM / 10;
    return new Length(tenth).times(length.dividedBy(tenth, RoundingMode.HALF_UP).ticks());
  }

  private String millimetres(Length length) {
    BigDecimal mm = tenths(length).toMmExact().stripTrailingZeros();
    return mm.signum() == 0 ? "0" : mm.toPlainString().replace(POINT, decimalMark);
  }
}
