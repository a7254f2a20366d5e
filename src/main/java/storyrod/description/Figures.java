package storyrod.description;

import java.math.RoundingMode;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;

/** Lengths as messages show them: in the project's unit, with "about" where that is not exact. */
record Figures(Unit unit) {
  private static final LengthFormat FINE_INCHES = new LengthFormat(Unit.INCH, 128);
  private static final int DECIMALS_OF_MM = 4;

  String of(Length length) {
    return switch (unit) {
      case INCH -> inches(length);
      case MM -> millimetres(length);
    };
  }

  private static String inches(Length length) {
    boolean exact = FINE_INCHES.rounded(length).equals(length);
    return (exact ? "" : "about ") + FINE_INCHES.formatWithUnit(length);
  }

  private static String millimetres(Length length) {
    return length
            .toMmExact()
            .setScale(DECIMALS_OF_MM, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString()
        + " mm";
  }
}
