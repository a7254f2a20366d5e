package storyrod.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How lengths are printed: inches with a reduced fraction, or millimetres with one decimal.
 *
 * <p>{@code new LengthFormat(Unit.INCH, 64).format(Length.inch(46, 64))} gives {@code 23/32}; 18.2
 * mm in millimetres gives {@code 18.2}. The unit itself is not printed.
 *
 * <p>The other unit stands in square brackets, as in {@code 23 1/4 [590.6]}: the bracket method of
 * dual dimensioning (from memory, ASME Y14.5). Round ones mark auxiliary dimensions (ISO 129-1).
 *
 * @param unit the unit of the printed figures
 * @param denominator the finest fraction of an inch, a power of two up to 128
 * @param decimalMark what stands before tenths of a millimetre
 * @param second where the other unit stands behind it
 */
public record LengthFormat(Unit unit, int denominator, char decimalMark, Second second) {
  private static final char POINT = '.';

  private static final int BIT_STEPS = 64;

  /** Before figures that print rounds, as before a radius. */
  private static final String ABOUT = "≈ ";

  private static final double DUST_MM = 1e-3;

  /** Where the other unit stands behind the figures. */
  public enum Second {
    NEVER,
    /** Only behind the sizes of bits, which are bought by the unit in which they are made. */
    BITS,
    /** Behind each length, by its name: {@code 6.4 [1/4 in]}. */
    NAMED,
    ALWAYS
  }

  public LengthFormat {
    if (denominator < 1 || denominator > 128 || Integer.bitCount(denominator) != 1) {
      throw new IllegalArgumentException("no fraction of an inch: 1/" + denominator);
    }
  }

  /** A format with a decimal point. */
  public LengthFormat(Unit unit, int denominator) {
    this(unit, denominator, POINT, Second.NEVER);
  }

  /** The same in another unit alone. */
  public LengthFormat in(Unit other) {
    return new LengthFormat(other, denominator, decimalMark, Second.NEVER);
  }

  /** The same without the other unit. */
  public LengthFormat alone() {
    return in(unit);
  }

  /**
   * What is written in this format, printed in other units. Inches made from millimetres go to 1/64
   * at least, for what is off by little is off by more in a sum.
   */
  public LengthFormat shownIn(Units units) {
    return switch (units) {
      case OWN -> this;
      case INCH -> converted(Unit.INCH);
      case MM -> converted(Unit.MM);
      case BOTH -> with(Second.ALWAYS);
    };
  }

  private LengthFormat converted(Unit to) {
    return to == unit
        ? this
        : new LengthFormat(to, Math.max(denominator, BIT_STEPS), decimalMark, Second.BITS);
  }

  private LengthFormat with(Second other) {
    return new LengthFormat(unit, denominator, decimalMark, other);
  }

  /** Whether each length stands in both units. */
  public boolean isDual() {
    return second == Second.ALWAYS;
  }

  /** The same with another mark before tenths. */
  public LengthFormat withMark(char mark) {
    return new LengthFormat(unit, denominator, mark, second);
  }

  /** The format for the diameters of holes and drills, which come in steps of 1/64 in at least. */
  public LengthFormat forBits() {
    Second named = second == Second.BITS ? Second.NAMED : second;
    return new LengthFormat(unit, Math.max(denominator, BIT_STEPS), decimalMark, named);
  }

  /** The printed figures of a length, without its unit. */
  public String format(Length length) {
    return figures(length)
        + switch (second) {
          case NEVER, BITS -> "";
          case NAMED -> bracketed(other().withUnit(length));
          case ALWAYS -> bracketed(other().figures(length));
        };
  }

  /**
   * The figures of a dimension, of which none is rounded without a word: in 64ths of an inch where
   * only these are exact, else with a sign before them. Of what is converted from another unit the
   * pages say it once.
   */
  public String told(Length length) {
    return about(length) + telling(length).format(length);
  }

  /** The same with the unit behind them, for a place that a dimension tells too. */
  public String toldWithUnit(Length length) {
    return about(length) + telling(length).formatWithUnit(length);
  }

  private String about(Length length) {
    return isConverted() || telling(length).prints(length) ? "" : ABOUT;
  }

  /** This format, or a finer one where only that prints a length. */
  private LengthFormat telling(Length length) {
    if (isConverted() || prints(length)) {
      return this;
    }
    LengthFormat fine =
        new LengthFormat(unit, Math.max(denominator, BIT_STEPS), decimalMark, second);
    return fine.prints(length) ? fine : this;
  }

  private boolean isConverted() {
    return second == Second.BITS || second == Second.NAMED;
  }

  /** Whether the figures of a length are its own, but for what turning a part leaves behind. */
  private boolean prints(Length length) {
    return Math.abs(rounded(length).toMm() - length.toMm()) < DUST_MM;
  }

  /** The printed figures with the unit behind them: {@code 3/4 in}, {@code 19 mm}. */
  public String formatWithUnit(Length length) {
    return withUnit(length)
        + switch (second) {
          case NEVER, BITS -> "";
          case NAMED, ALWAYS -> bracketed(other().withUnit(length));
        };
  }

  /**
   * The format of the other unit, for what stands in brackets: as fine for every length as for
   * bits, or one length would bear two names.
   */
  public LengthFormat other() {
    int steps = Math.max(denominator, BIT_STEPS);
    return new LengthFormat(
        unit == Unit.INCH ? Unit.MM : Unit.INCH, steps, decimalMark, Second.NEVER);
  }

  private static String bracketed(String figures) {
    return " [" + figures + "]";
  }

  private String withUnit(Length length) {
    return figures(length) + (unit == Unit.INCH ? " in" : " mm");
  }

  private String figures(Length length) {
    return switch (unit) {
      case INCH -> inches(length);
      case MM -> millimetres(length);
    };
  }

  /** The length that is printed, which differs from the exact one by at most half a step. */
  public Length rounded(Length length) {
    return switch (unit) {
      case INCH -> step().times(steps(length));
      case MM -> tenths(length);
    };
  }

  /** What printed lengths are whole numbers of. */
  public Length step() {
    return switch (unit) {
      case INCH -> Length.inch(1, denominator);
      case MM -> new Length(Length.TICKS_PER_MM / 10);
    };
  }

  private long steps(Length length) {
    return length.dividedBy(step().ticks(), RoundingMode.HALF_UP).ticks();
  }

  private String inches(Length length) {
    long steps = steps(length.abs());
    String sign = length.isNegative() && steps > 0 ? "-" : "";
    long whole = steps / denominator;
    long rest = steps % denominator;
    if (rest == 0) {
      return sign + whole;
    }
    long divisor = Long.lowestOneBit(rest);
    String fraction = rest / divisor + "/" + denominator / divisor;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }

  private static Length tenths(Length length) {
    long tenth = Length.TICKS_PER_MM / 10;
    return new Length(tenth).times(length.dividedBy(tenth, RoundingMode.HALF_UP).ticks());
  }

  private String millimetres(Length length) {
    BigDecimal mm = tenths(length).toMmExact().stripTrailingZeros();
    return mm.signum() == 0 ? "0" : mm.toPlainString().replace(POINT, decimalMark);
  }
}
