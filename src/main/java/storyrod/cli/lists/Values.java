package storyrod.cli.lists;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.planset.Printable;

/** Reads what the cells of lists hold; what a cell cannot hold is reported and left out. */
final class Values {
  /** A kilometre: more is a slip, and the squares of sizes stay numbers that can be counted in. */
  private static final Length LONGEST = Length.mm(1_000_000);

  private static final Pattern DECIMAL_COMMA = Pattern.compile("-?\\d+,\\d+");
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final int MOST_DIGITS = 18;
  private static final BigDecimal DEAREST = BigDecimal.valueOf(10_000_000_000L);
  private static final int MOST_PLACES = 4;

  private final Unit unit;
  private final Diagnostics diagnostics;

  Values(Unit unit, Diagnostics diagnostics) {
    this.unit = unit;
    this.diagnostics = diagnostics;
  }

  /** A text that must be there. */
  Optional<String> text(Cell cell, String column) {
    if (cell.isEmpty()) {
      return fault(
          Diagnostic.error("empty-cell", cell.at(), "the column '%s' is empty".formatted(column))
              .hint("write a name or a number"));
    }
    return cell.text().codePoints().allMatch(Printable::has)
        ? Optional.of(cell.text())
        : fault(
            Diagnostic.error("unprintable", cell.at(), "a character here cannot be printed")
                .hint("write it another way"));
  }

  /** A size, which is more than nothing. */
  Optional<Length> size(Cell cell) {
    return length(cell)
        .flatMap(
            length ->
                length.isPositive()
                    ? Optional.of(length)
                    : fault(
                        Diagnostic.error(
                                "size-not-positive",
                                cell.at(),
                                "expected a size of more than 0, found " + cell.text())
                            .hint("write the size to be sawn, or take the row out")));
  }

  /** A kerf or a trim, which may be nothing. */
  Optional<Length> allowance(Cell cell, String column) {
    if (cell.isEmpty()) {
      return Optional.of(Length.ZERO);
    }
    return length(cell)
        .flatMap(
            length ->
                length.isNegative()
                    ? fault(
                        Diagnostic.error(
                                "below-zero",
                                cell.at(),
                                "the column '%s' cannot be below 0, found %s"
                                    .formatted(column, cell.text()))
                            .hint("write what is sawn away, or 0"))
                    : Optional.of(length));
  }

  private Optional<Length> length(Cell cell) {
    Optional<Length> length = parsed(cell.text() + " " + (unit == Unit.MM ? "mm" : "in"));
    length = length.or(() -> parsed(cell.text()));
    if (length.isEmpty()) {
      return fault(notALength(cell));
    }
    return length.get().abs().isLongerThan(LONGEST) ? fault(tooLong(cell)) : length;
  }

  private static Optional<Length> parsed(String text) {
    try {
      return Optional.of(Length.parse(text));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private Diagnostic notALength(Cell cell) {
    Diagnostic fault =
        Diagnostic.error(
            "not-a-length", cell.at(), "expected a length, found '%s'".formatted(cell.text()));
    return DECIMAL_COMMA.matcher(cell.text()).matches()
        ? fault.hint("write decimals with a point, `%s`".formatted(cell.text().replace(',', '.')))
        : fault.hint(
            switch (unit) {
              case MM -> "write millimetres, such as 600 or 18.5";
              case INCH -> "write inches, such as 24, 24.5 or 24 1/2";
            });
  }

  private static Diagnostic tooLong(Cell cell) {
    return Diagnostic.error(
            "too-large", cell.at(), "expected at most a kilometre, found " + cell.text())
        .hint("look at the units");
  }

  /**
   * A whole number within bounds.
   *
   * @param hint what to do where it lies outside
   */
  Optional<Integer> whole(Cell cell, int least, int most, String hint) {
    if (!cell.text().matches("-?\\d{1,%d}".formatted(MOST_DIGITS))) {
      return fault(notWhole(cell));
    }
    long value = Long.parseLong(cell.text());
    if (value < least || value > most) {
      return fault(
          Diagnostic.error(
                  "out-of-range",
                  cell.at(),
                  "expected %d to %d, found %s".formatted(least, most, cell.text()))
              .hint(hint));
    }
    return Optional.of((int) value);
  }

  private static Diagnostic notWhole(Cell cell) {
    return Diagnostic.error(
            "not-a-number", cell.at(), "expected a whole number, found '%s'".formatted(cell.text()))
        .hint("write it in digits only, such as 4");
  }

  /** The price of a piece. */
  Optional<BigDecimal> cost(Cell cell) {
    boolean isNumber = NUMBER.matcher(cell.text()).matches();
    BigDecimal cost = isNumber ? new BigDecimal(cell.text()) : BigDecimal.ONE.negate();
    if (cost.signum() < 0 || cost.compareTo(DEAREST) > 0 || cost.scale() > MOST_PLACES) {
      return fault(
          Diagnostic.error(
                  "not-a-cost", cell.at(), "expected a cost, found '%s'".formatted(cell.text()))
              .hint("write a number such as 54 or 54.90, without a currency sign"));
    }
    return Optional.of(cost);
  }

  private <T> Optional<T> fault(Diagnostic fault) {
    diagnostics.add(fault);
    return Optional.empty();
  }
}
