package storyrod.description;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What to do about signs and words that people often write into a formula and that have no place.
 */
final class FormulaHints {
  static final String POINT = "write a decimal number with one point, such as `0.5`";
  private static final String BETWEEN = "put `+`, `-`, `*` or `/` between two values";
  private static final Pattern MIXED = Pattern.compile("(\\d+)-(\\d+/\\d+)");

  /** The first that fits what stands at a place counts; what stands before it may be looked at. */
  private static final List<Slip> SLIPS =
      List.of(
          slip("[xX×·•](?![\\p{L}\\p{N}_-])", "write a product with `*`: `2 * width`"),
          slip("[÷:]", "write a quotient with `/`: `width / 2`"),
          slip("\\^", "there are no powers; a length times a length is no length"),
          slip("==", "write a single `=`"),
          slip("=", "leave `=` away; the formula is what stands behind it"),
          slip("%", "write a share as a number: `0.5 * width`"),
          slip("[\\[{\\]}]", "use round parentheses, as in `(a + b) / 2`"),
          slip("[$€£]", "leave the sign of money away"),
          slip("[¼½¾⅐-⅞]", "write the fraction with a slash, as in `1 1/2`"),
          slip("[′‘’]", "write feet with a straight mark or as `ft`"),
          slip("[″“”]", "write inches with a straight mark or as `in`"),
          unit("in(?:ch|ches|s)?\\b\\.?", "in"),
          unit("(?:feet|foot|ft)\\b\\.?", "ft"),
          unit("(?:mm|millimet(?:er|re)s?)\\b\\.?", "mm"),
          unit("(?:cm|centimet(?:er|re)s?)\\b\\.?", "cm"),
          unit("(?:m|met(?:er|re)s?)\\b\\.?", "m"),
          slip("(?<![0-9])\\.[0-9]", "write a zero before the point, as in `0.75`"),
          slip("(?<=[0-9]),[0-9]{3}(?![0-9])", "leave the comma away; " + POINT),
          slip("[.,]", POINT),
          slip(
              "(?<=(?:min|max|round-up|printable) {0,9})[^ (]",
              "put its values in parentheses: `max(a, b)`"),
          slip("(?<=\\()\\)", "put a value between these parentheses"),
          slip("\\)", "take it away, or open a parenthesis before it"),
          slip("(?<=[-+*/(] {0,9})[*/+]", "put a value before it, or leave one of the signs away"),
          slip("^[*/+]", "put a value before it"),
          slip("(?<=[0-9] {0,9})\\p{L}", BETWEEN + "; lengths have mm, cm, m, in, ft, \" or '"),
          slip("(?<=[\\p{L}\\p{N})\"'] {0,9})[\\p{L}\\p{N}_(]", BETWEEN));

  private FormulaHints() {}

  private record Slip(Pattern pattern, String hint) {}

  private static Slip slip(String pattern, String hint) {
    return new Slip(Pattern.compile(pattern), hint);
  }

  private static Slip unit(String words, String right) {
    return slip("(?i)(?<=[0-9] {0,9})" + words, "write the unit as `" + right + "`");
  }

  /** What to do about what stands at a place of a formula, if it is a usual slip. */
  static Optional<String> at(String text, int at) {
    return SLIPS.stream()
        .filter(
            slip ->
                slip.pattern()
                    .matcher(text)
                    .region(at, text.length())
                    .useTransparentBounds(true)
                    .lookingAt())
        .findFirst()
        .map(Slip::hint);
  }

  /** What to do about a sign that has no space on one of its sides. */
  static String spaces(String text, int at) {
    char sign = text.charAt(at);
    Matcher mixed = MIXED.matcher(text);
    while (sign == '-' && mixed.find()) {
      if (mixed.start() < at && at < mixed.end()) {
        String whole = mixed.group(1);
        return "write `%s %s` for one number, `%s - %s` for a difference"
            .formatted(whole, mixed.group(2), whole, mixed.group(2));
      }
    }
    String why = sign == '-' ? "; without spaces a hyphen may belong to a name" : "";
    return "write `a " + sign + " b`" + why;
  }
}
