package storyrod.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An exact angle: a whole number of millionths of a degree.
 *
 * <pre>Angle.degrees(8).tan() * thickness.toMm()</pre>
 *
 * @param microdegrees the angle in millionths of a degree; may be negative
 */
public record Angle(long microdegrees) implements Comparable<Angle> {
  public static final long PER_DEGREE = 1_000_000;
  public static final Angle ZERO = new Angle(0);
  public static final Angle RIGHT = degrees(90);
  private static final int SHOWN_DECIMALS = 2;

  public static Angle degrees(long degrees) {
    return new Angle(Math.multiplyExact(degrees, PER_DEGREE));
  }

  /** The nearest microdegree to an exact number of degrees. */
  public static Angle degrees(Rational degrees) {
    Rational micro = degrees.times(Rational.of(PER_DEGREE, 1));
    return new Angle(micro.toLength(RoundingMode.HALF_EVEN).ticks());
  }

  /** The nearest microdegree to radians that were computed in floating point. */
  public static Angle nearest(double radians) {
    return new Angle(Math.round(StrictMath.toDegrees(radians) * PER_DEGREE));
  }

  /** The angle of a slope that rises so much over so long a run. */
  public static Angle of(Length rise, Length run) {
    return nearest(StrictMath.atan2(rise.ticks(), run.ticks()));
  }

  public double toRadians() {
    return StrictMath.toRadians(microdegrees / (double) PER_DEGREE);
  }

  public double sin() {
    return StrictMath.sin(toRadians());
  }

  public double cos() {
    return StrictMath.cos(toRadians());
  }

  public double tan() {
    return StrictMath.tan(toRadians());
  }

  public Angle negated() {
    return new Angle(Math.negateExact(microdegrees));
  }

  public Angle abs() {
    return isNegative() ? negated() : this;
  }

  public boolean isZero() {
    return microdegrees == 0;
  }

  public boolean isNegative() {
    return microdegrees < 0;
  }

  /** What is missing to a right angle. */
  public Angle complement() {
    return new Angle(RIGHT.microdegrees - microdegrees);
  }

  @Override
  public int compareTo(Angle other) {
    return Long.compare(microdegrees, other.microdegrees);
  }

  /** Degrees to a hundredth with their sign, such as {@code 8°} or {@code 7.5°}. */
  @Override
  public String toString() {
    BigDecimal degrees = BigDecimal.valueOf(microdegrees, 6);
    BigDecimal shown = degrees.setScale(SHOWN_DECIMALS, RoundingMode.HALF_UP);
    return shown.signum() == 0 ? "0°" : shown.stripTrailingZeros().toPlainString() + "°";
  }
}
