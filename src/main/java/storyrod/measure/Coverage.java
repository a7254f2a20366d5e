package storyrod.measure;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What area a volume of glue or finish covers, once; exact.
 *
 * @param squareMetresPerLitre above zero
 */
public record Coverage(Rational squareMetresPerLitre) {
  /** In square metres; the international foot is 304.8 mm. */
  private static final Rational SQUARE_FOOT = Rational.of(9_290_304, 100_000_000);

  private static final Map<String, Rational> UNITS =
      Map.of(
          "m2/l", Rational.ONE,
          "ft2/gal", SQUARE_FOOT.dividedBy(Volume.GALLON),
          "ft2/qt", SQUARE_FOOT.dividedBy(Volume.GALLON).times(Rational.of(4, 1)));

  private static final Pattern TEXT =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,4})?) ?(m2/l|ft2/gal|ft2/qt)");

  /** Reads {@code 12 m2/l} or {@code 500 ft2/gal}; nothing if that is no coverage above zero. */
  public static Optional<Coverage> parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    Rational amount = Rational.of(new BigDecimal(matcher.group(1)));
    return amount.signum() == 0
        ? Optional.empty()
        : Optional.of(new Coverage(amount.times(UNITS.get(matcher.group(2)))));
  }
}
