package storyrod.measure;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A volume of a liquid as it is sold, exact.
 *
 * @param litres above zero
 * @param unit the unit it was written in, in which it prints
 */
public record Volume(Rational litres, String unit) {
  /** In litres; a US gallon is 231 cubic inches of 25.4 mm (NIST Handbook 44, appendix C). */
  static final Rational GALLON = Rational.of(3_785_411_784L, 1_000_000_000L);

  private static final Map<String, Rational> UNITS =
      Map.of(
          "ml", Rational.of(1, 1000),
          "l", Rational.ONE,
          "fl-oz", GALLON.times(Rational.of(1, 128)),
          "pt", GALLON.times(Rational.of(1, 8)),
          "qt", GALLON.times(Rational.of(1, 4)),
          "gal", GALLON);

  private static final Pattern TEXT =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,4})?) ?(ml|l|fl-oz|pt|qt|gal)");

  /** Reads {@code 500 ml} or {@code 1 qt}; nothing if that is no volume above zero. */
  public static Optional<Volume> parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    Rational amount = Rational.of(new BigDecimal(matcher.group(1)));
    String unit = matcher.group(2);
    return amount.signum() == 0
        ? Optional.empty()
        : Optional.of(new Volume(amount.times(UNITS.get(unit)), unit));
  }

  /** How many of its unit it is. */
  public Rational amount() {
    return litres.dividedBy(UNITS.get(unit));
  }
}
