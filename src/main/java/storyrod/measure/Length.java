package storyrod.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * An exact length: a whole number of ticks of 1/16 µm.
 *
 * <p>A tick is the largest unit in which both 1/128 in (3175 ticks) and 1 µm (16 ticks) are whole
 * numbers. Arithmetic is checked; whatever rounds asks how.
 *
 * <pre>Length.inches(3).plus(Length.inch(1, 2)).dividedBy(3, RoundingMode.HALF_EVEN)</pre>
 *
 * @param ticks the length in ticks of 1/16 µm; may be negative
 */
public record Length(long ticks) implements Comparable<Length> {
  public static final long TICKS_PER_MICROMETRE = 16;
  public static final long TICKS_PER_MM = 1000 * TICKS_PER_MICROMETRE;
  public static final long TICKS_PER_INCH = 25_400 * TICKS_PER_MICROMETRE;
  public static final Length ZERO = new Length(0);

  public static Length mm(long mm) {
    return new Length(Math.multiplyExact(mm, TICKS_PER_MM));
  }

  public static Length micrometres(long micrometres) {
    return new Length(Math.multiplyExact(micrometres, TICKS_PER_MICROMETRE));
  }

  public static Length inches(long inches) {
    return new Length(Math.multiplyExact(inches, TICKS_PER_INCH));
  }

  /**
   * A fraction of an inch, such as {@code inch(3, 4)}.
   *
   * @throws ArithmeticException if the fraction is not a whole number of ticks
   */
  public static Length inch(long numerator, long denominator) {
    return Rational.of(numerator, denominator).times(Rational.of(TICKS_PER_INCH, 1)).toTicks();
  }

  /** The nearest tick to a measure in millimetres that was computed in floating point. */
  public static Length nearest(double mm) {
    return new Length(Math.round(mm * TICKS_PER_MM));
  }

  /**
   * Reads what a person writes, with its unit: {@code 19 mm}, {@code 3/4 in}, {@code 5' 2 1/2"}.
   */
  public static Length parse(String text) {
    return LengthReader.read(text);
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(ticks, other.ticks));
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(ticks, other.ticks));
  }

  public Length times(long factor) {
    return new Length(Math.multiplyExact(ticks, factor));
  }

  public Length dividedBy(long divisor, RoundingMode rounding) {
    BigDecimal quotient =
        BigDecimal.valueOf(ticks).divide(BigDecimal.valueOf(divisor), 0, rounding);
    return new Length(quotient.longValueExact());
  }

  /** This length times a ratio, rounded to a whole tick. */
  public Length times(Rational ratio, RoundingMode rounding) {
    return ratio.times(Rational.of(ticks, 1)).toLength(rounding);
  }

  public Length negated() {
    return new Length(Math.negateExact(ticks));
  }

  public Length abs() {
    return ticks < 0 ? negated() : this;
  }

  public Length max(Length other) {
    return ticks >= other.ticks ? this : other;
  }

  public Length min(Length other) {
    return ticks <= other.ticks ? this : other;
  }

  public boolean isLongerThan(Length other) {
    return ticks > other.ticks;
  }

  public boolean isShorterThan(Length other) {
    return ticks < other.ticks;
  }

  public boolean isPositive() {
    return ticks > 0;
  }

  public boolean isNegative() {
    return ticks < 0;
  }

  public boolean isZero() {
    return ticks == 0;
  }

  /** The length in millimetres, for geometry in floating point. */
  public double toMm() {
    return ticks / (double) TICKS_PER_MM;
  }

  /** The length in whole micrometres, half a micrometre rounded up in size. */
  public long toMicrometres() {
    return dividedBy(TICKS_PER_MICROMETRE, RoundingMode.HALF_UP).ticks;
  }

  /** The exact length in millimetres. */
  public BigDecimal toMmExact() {
    return new BigDecimal(BigInteger.valueOf(ticks)).divide(BigDecimal.valueOf(TICKS_PER_MM));
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(ticks, other.ticks);
  }

  /** The exact length in millimetres with its unit; {@link #parse} reads it back. */
  @Override
  public String toString() {
    return toMmExact().stripTrailingZeros().toPlainString() + " mm";
  }
}
