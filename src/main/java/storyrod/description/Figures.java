package storyrod.description;

import java.math.RoundingMode;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;

/** Lengths as messages show them: in the project's unit where that is exact, else as they are. */
record Figures(Unit unit) {
  private static final LengthFormat FINE_INCHES = new LengthFormat(Unit.INCH, 128);
  private static final LengthFormat MM = new LengthFormat(Unit.MM, 1);

  String of(Length length) {
    boolean inches = unit == Unit.INCH && FINE_INCHES.rounded(length).equals(length);
    if (inches) {
      return FINE_INCHES.formatWithUnit(length);
    }
    if (MM.rounded(length).equals(length)) {
      return MM.formatWithUnit(length);
    }
    return length.toMmExact().setScale(4, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString() + " mm";
  }
}
