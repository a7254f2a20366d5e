package storyrod.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** An exact fraction in lowest terms with a positive denominator; formulas are worked out in it. */
public record Rational(BigInteger numerator, BigInteger denominator)
    implements Comparable<Rational> {
  public static final Rational ZERO = of(0, 1);
  public static final Rational ONE = of(1, 1);

  public Rational {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("division by zero");
    }
    if (denominator.signum() < 0) {
      numerator = numerator.negate();
      denominator = denominator.negate();
    }
    BigInteger divisor = numerator.gcd(denominator);
    if (!divisor.equals(BigInteger.ONE)) {
      numerator = numerator.divide(divisor);
      denominator = denominator.divide(divisor);
    }
  }

  public static Rational of(long numerator, long denominator) {
    return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /** The exact value of a decimal number such as {@code 18.2}. */
  public static Rational of(BigDecimal decimal) {
    return decimal.scale() <= 0
        ? new Rational(decimal.toBigIntegerExact(), BigInteger.ONE)
        : new Rational(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
  }

  public Rational plus(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  public Rational minus(Rational other) {
    return plus(other.negated());
  }

  public Rational times(Rational other) {
    return new Rational(
        numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  /**
   * The quotient of two fractions.
   *
   * @throws ArithmeticException if the divisor is zero
   */
  public Rational dividedBy(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  public Rational negated() {
    return new Rational(numerator.negate(), denominator);
  }

  public int signum() {
    return numerator.signum();
  }

  /** The least whole number that is not below this one. */
  public Rational roundedUp() {
    BigInteger[] whole = numerator.divideAndRemainder(denominator);
    boolean isAbove = whole[1].signum() > 0;
    return new Rational(isAbove ? whole[0].add(BigInteger.ONE) : whole[0], BigInteger.ONE);
  }

  public boolean isWhole() {
    return denominator.equals(BigInteger.ONE);
  }

  /**
   * This number of ticks as a length.
   *
   * @throws ArithmeticException if it is too large for a length
   */
  public Length toLength(RoundingMode rounding) {
    BigDecimal ticks = new BigDecimal(numerator).divide(new BigDecimal(denominator), 0, rounding);
    return new Length(ticks.longValueExact());
  }

  Length toTicks() {
    return toLength(RoundingMode.UNNECESSARY);
  }

  public double toDouble() {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), java.math.MathContext.DECIMAL64)
        .doubleValue();
  }

  @Override
  public int compareTo(Rational other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  @Override
  public String toString() {
    return isWhole() ? numerator.toString() : numerator + "/" + denominator;
  }
}
