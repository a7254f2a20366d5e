package storyrod.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one written length: an optional sign, then feet, inches or millimetres. */
final class LengthReader {
  private static final String NUMBER = "(\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?)";
  private static final Pattern FEET =
      Pattern.compile("(-?)(\\d+) ?(?:'|ft)(?: ?" + NUMBER + " ?(?:\"|in))?");
  private static final Pattern PLAIN = Pattern.compile("(-?)" + NUMBER + " ?(mm|cm|m|in|inch|\")");

  private LengthReader() {}

  static Length read(String text) {
    String trimmed = text.strip();
    Matcher feet = FEET.matcher(trimmed);
    if (feet.matches()) {
      Rational whole = number(feet.group(2)).times(Rational.of(12, 1));
      Rational rest = feet.group(3) == null ? Rational.ZERO : number(feet.group(3));
      return signed(feet.group(1), length(whole.plus(rest), Length.TICKS_PER_INCH));
    }
    Matcher plain = PLAIN.matcher(trimmed);
    if (plain.matches()) {
      return signed(plain.group(1), length(number(plain.group(2)), ticksPer(plain.group(3))));
    }
    throw new IllegalArgumentException("expected a length with its unit, found '" + text + "'");
  }

  private static Length signed(String sign, Length length) {
    return sign.isEmpty() ? length : length.negated();
  }

  private static Length length(Rational number, long ticksPerUnit) {
    Rational ticks = number.times(Rational.of(ticksPerUnit, 1));
    if (ticks.numerator().divide(ticks.denominator()).bitLength() >= Long.SIZE - 1) {
      throw new IllegalArgumentException("too large for a length");
    }
    return ticks.toLength(RoundingMode.HALF_EVEN);
  }

  private static long ticksPer(String unit) {
    return switch (unit) {
      case "mm" -> Length.TICKS_PER_MM;
      case "cm" -> 10 * Length.TICKS_PER_MM;
      case "m" -> 1000 * Length.TICKS_PER_MM;
      default -> Length.TICKS_PER_INCH;
    };
  }

  private static Rational number(String text) {
    int space = text.indexOf(' ');
    if (space >= 0) {
      return number(text.substring(0, space)).plus(number(text.substring(space + 1)));
    }
    int slash = text.indexOf('/');
    if (slash >= 0) {
      return fraction(text, slash);
    }
    return Rational.of(new BigDecimal(text));
  }

  private static Rational fraction(String text, int slash) {
    Rational below = number(text.substring(slash + 1));
    if (below.signum() == 0) {
      throw new IllegalArgumentException("'" + text + "' divides by zero");
    }
    return number(text.substring(0, slash)).dividedBy(below);
  }
}
