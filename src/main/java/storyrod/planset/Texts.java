package storyrod.planset;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Function;
import storyrod.description.StockEntry;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Unit;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Values as the reader sees them, in the project's unit and language. */
record Texts(LengthFormat format, Words words) {
  /** A board foot is 144 cubic inches, and an inch 25.4 mm exactly. */
  private static final Rational CUBIC_METRES_PER_BOARD_FOOT =
      Rational.of(144L * 254 * 254 * 254, 1_000_000_000_000L);

  static Texts of(Piece piece) {
    return new Texts(piece.description().printed(), piece.description().words());
  }

  /** The same with lengths in the main unit alone, for lists that other programs read. */
  Texts inOneUnit() {
    return new Texts(format.alone(), words);
  }

  /**
   * A text with several lengths, as a whole in each unit: {@code 54 × 17 1/2 in [1371.6 × 444.5
   * mm]}.
   */
  String inUnits(Function<Texts, String> written) {
    String main = written.apply(inOneUnit());
    return format.isDual()
        ? main + " [" + written.apply(new Texts(format.other(), words)) + "]"
        : written.apply(this);
  }

  /** The unit of lengths as a title block and a list name it. */
  String unit() {
    return named("unit.");
  }

  /** The unit of length in words, for all sizes. */
  String units() {
    return named("units.");
  }

  private String named(String key) {
    String main = say(key + format.unit().word());
    return format.isDual()
        ? say(key + "both", main, say(key + format.other().unit().word()))
        : main;
  }

  String say(String key, Object... values) {
    return words.say(key, values);
  }

  String length(Length length) {
    return format.format(length);
  }

  String lengthWithUnit(Length length) {
    return format.formatWithUnit(length);
  }

  /** A stock by its wood and thickness: {@code White ash 3/4}, and that it is quarter-sawn. */
  String stock(StockEntry stock) {
    String named = species(stock) + " " + length(stock.thickness().value());
    return stock.figures().quarterSawn() ? words.say("stock.quarter", named) : named;
  }

  /** A wood's name as spoken, at the head of a line: {@code White ash}. */
  String species(StockEntry stock) {
    return capital(wood(stock));
  }

  /** A wood's name in a sentence: tables list {@code ash, white}, readers say {@code white ash}. */
  String wood(StockEntry stock) {
    return stock.wood(words);
  }

  String money(Rational amount) {
    return figures(amount, 2);
  }

  /** An amount of money as it is printed. */
  static Rational cents(Rational amount) {
    return rounded(amount, 2);
  }

  /** A number as it is printed with so many decimals. */
  static Rational rounded(Rational value, int places) {
    return Rational.of(new BigDecimal(decimal(value, places)));
  }

  /** A volume of boards, given in board feet, in the unit of the trade: board feet or m³. */
  String boardVolume(Rational boardFeet) {
    return words.figures(plainBoardVolume(boardFeet));
  }

  /** The same with a decimal point in any language. */
  String plainBoardVolume(Rational boardFeet) {
    return format.unit() == Unit.INCH
        ? decimal(boardFeet, 1)
        : decimal(boardFeet.times(CUBIC_METRES_PER_BOARD_FOOT), 3);
  }

  String duration(int minutes) {
    return new Durations(words).brief(minutes);
  }

  static String capital(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.offsetByCodePoints(0, 1);
    return text.substring(0, first).toUpperCase(java.util.Locale.ROOT) + text.substring(first);
  }

  /** A number to some places, as the reader's language writes it. */
  String figures(Rational value, int places) {
    return words.figures(decimal(value, places));
  }

  static String decimal(Rational value, int places) {
    return new BigDecimal(value.numerator())
        .divide(new BigDecimal(value.denominator()), places, RoundingMode.HALF_UP)
        .toPlainString();
  }
}
