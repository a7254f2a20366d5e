package storyrod.description;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.measure.Unit;

/** Finds numbers without a unit that look as if they were meant in the other unit. */
final class UnitMixUp {
  private static final Pattern BARE =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}_./-])(?:\\d+ +)?\\d+(?:/\\d+|\\.\\d+)?"
              + "(?![\\p{L}\\p{N}_./-]| *(?:mm|cm|m|inch|in|ft|\"|')(?![\\p{L}\\p{N}]))");
  private static final double MANY_INCHES = 100;

  private UnitMixUp() {}

  /** What to do about the first such number of a formula, in a project of a unit. */
  static Optional<String> hint(String formula, Unit unit) {
    return hint(formula, unit, MANY_INCHES);
  }

  /** As {@link #hint(String, Unit)}, where so many inches are too many. */
  static Optional<String> hint(String formula, Unit unit, double tooMany) {
    Matcher bare = BARE.matcher(formula);
    while (bare.find()) {
      String number = bare.group();
      boolean fraction = number.contains("/");
      boolean millimetres =
          unit == Unit.INCH && !fraction && Double.parseDouble(last(number)) >= tooMany;
      if (millimetres || unit == Unit.MM && fraction) {
        return Optional.of(said(number, unit));
      }
    }
    return Optional.empty();
  }

  private static String last(String number) {
    return number.substring(number.lastIndexOf(' ') + 1);
  }

  private static String said(String number, Unit unit) {
    return switch (unit) {
      case INCH ->
          "a number alone is in inches here; if %s is meant in millimetres, write `%s mm`"
              .formatted(number, number);
      case MM ->
          "a number alone is in millimetres here; if %s is meant in inches, write `%s in`"
              .formatted(number, number);
    };
  }
}
