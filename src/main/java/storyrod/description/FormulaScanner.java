package storyrod.description;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.description.Expression.Literal;
import storyrod.description.Expression.Stretch;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/** Walks over a formula's text and takes numbers, names and signs from it. */
final class FormulaScanner {
  static final String SYNTAX = "formula";
  private static final String DASHES = "\u2010\u2011\u2012\u2013\u2014\u2212\uFE63\uFF0D";
  private static final int LONGEST = 2000;
  private static final int MOST_DIGITS = 30;
  private static final String UNITS_HINT =
      "lengths have mm, cm, m, in, ft, \" or '; other signs are + - * / ( ) min max";
  private static final Pattern NUMBER =
      Pattern.compile("(?:(\\d+) +)?(\\d+)/(\\d+)|(\\d+(?:\\.\\d+)?)");
  private static final Pattern UNIT =
      Pattern.compile(" *(?:(mm|cm|m|inch|in|ft)(?![A-Za-z0-9_.-])|([\"']))");
  private static final Pattern NAME =
      Pattern.compile(
          "[\\p{L}_][\\p{L}\\p{N}_]*(?:-[\\p{L}\\p{N}_]+)*"
              + "(?:\\.[\\p{L}\\p{N}_]+(?:-[\\p{L}\\p{N}_]+)*)*");

  private final String text;
  private int at;

  FormulaScanner(String text) throws FormulaFault {
    this.text = text;
    if (text.length() > LONGEST) {
      throw new FormulaFault(
          SYNTAX,
          new Stretch(0, text.length()),
          "a formula of " + text.length() + " characters is too long",
          "give parts of it names in sizes");
    }
  }

  int at() {
    skipSpaces();
    return at;
  }

  boolean atEnd() {
    return at() == text.length();
  }

  /** The next character, or a blank at the end. */
  char peek() {
    return atEnd() ? ' ' : text.charAt(at);
  }

  boolean take(char expected) {
    boolean there = peek() == expected;
    at += there ? 1 : 0;
    return there;
  }

  /** Takes a plus or minus that stands between spaces. */
  boolean takeSpaced(char sign) throws FormulaFault {
    int start = at();
    if (!take(sign)) {
      return false;
    }
    boolean before = start > 0 && Character.isWhitespace(text.charAt(start - 1));
    boolean after = at == text.length() || Character.isWhitespace(text.charAt(at));
    if (!before || !after) {
      throw new FormulaFault(
          SYNTAX,
          new Stretch(start, at),
          "'" + sign + "' needs a space on both sides",
          FormulaHints.spaces(text, start));
    }
    return true;
  }

  /** The first of some signs that stands here. */
  Optional<String> takeSign(List<String> signs) {
    skipSpaces();
    Optional<String> found = signs.stream().filter(sign -> text.startsWith(sign, at)).findFirst();
    found.ifPresent(sign -> at += sign.length());
    return found;
  }

  boolean takeWord(String word) {
    Optional<String> found = match(NAME).map(Matcher::group).filter(word::equals);
    found.ifPresent(name -> at += name.length());
    return found.isPresent();
  }

  Optional<String> takeName() {
    Optional<String> found = match(NAME).map(Matcher::group);
    found.ifPresent(name -> at += name.length());
    return found;
  }

  Optional<Literal> takeNumber() throws FormulaFault {
    int start = at();
    Optional<Matcher> digits = match(NUMBER);
    if (digits.isEmpty()) {
      return Optional.empty();
    }
    at = digits.get().end();
    Rational number = number(digits.get());
    Value value = withUnit(number);
    refuseLetters(start);
    return Optional.of(new Literal(value, new Stretch(start, at)));
  }

  private void refuseLetters(int start) throws FormulaFault {
    if (at < text.length() && Character.isLetter(text.charAt(at))) {
      int end = at;
      while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
        end++;
      }
      String wrong = Quote.of(text.substring(at, end));
      throw new FormulaFault(
          SYNTAX,
          new Stretch(start, end),
          "'" + wrong + "' is no unit",
          FormulaHints.at(text, at).orElse(UNITS_HINT));
    }
  }

  private Rational number(Matcher digits) throws FormulaFault {
    if (digits.end() - digits.start() > MOST_DIGITS) {
      throw new FormulaFault(
          "too-large",
          new Stretch(digits.start(), digits.end()),
          "a number of too many digits",
          "write at most " + MOST_DIGITS + " digits");
    }
    if (digits.group(4) != null) {
      return Rational.of(new BigDecimal(digits.group(4)));
    }
    Rational below = whole(digits.group(3));
    if (below.signum() == 0) {
      throw new FormulaFault(
          "division-by-zero",
          new Stretch(digits.start(), digits.end()),
          "'" + digits.group() + "' divides by zero",
          "write another number below the line");
    }
    Rational whole = digits.group(1) == null ? Rational.ZERO : whole(digits.group(1));
    return whole.plus(whole(digits.group(2)).dividedBy(below));
  }

  private static Rational whole(String digits) {
    return Rational.of(new BigDecimal(digits));
  }

  private Value withUnit(Rational number) throws FormulaFault {
    Optional<Matcher> unit = matchHere(UNIT);
    if (unit.isEmpty()) {
      return Value.bare(number);
    }
    at = unit.get().end();
    String word = unit.get().group().strip();
    Rational ticks = number.times(Rational.of(ticksPer(word), 1));
    boolean feet = word.equals("'") || word.equals("ft");
    return Value.length(feet ? ticks.plus(inchesAfterFeet()) : ticks);
  }

  private Rational inchesAfterFeet() throws FormulaFault {
    int start = at;
    Optional<Matcher> digits = match(NUMBER);
    if (digits.isPresent()) {
      at = digits.get().end();
      Optional<Matcher> unit = matchHere(UNIT);
      if (unit.isPresent() && unit.get().group().strip().matches("\"|in|inch")) {
        at = unit.get().end();
        return number(digits.get()).times(Rational.of(Length.TICKS_PER_INCH, 1));
      }
    }
    at = start;
    return Rational.ZERO;
  }

  private static long ticksPer(String unit) {
    return switch (unit) {
      case "mm" -> Length.TICKS_PER_MM;
      case "cm" -> 10 * Length.TICKS_PER_MM;
      case "m" -> 1000 * Length.TICKS_PER_MM;
      case "'", "ft" -> 12 * Length.TICKS_PER_INCH;
      default -> Length.TICKS_PER_INCH;
    };
  }

  /** Whether a stretch is a fraction without a whole number before it. */
  boolean isFraction(int from, int to) {
    return text.substring(from, Math.min(to, text.length())).matches("\\d+/\\d+.*");
  }

  /** What to say of text that cannot stand where it stands. */
  FormulaFault unexpected(String expected) {
    return unexpected(expected, usualHint());
  }

  /** What to do about a sign that is often written wrongly, or something else to do. */
  String hintOr(String otherwise) {
    return DASHES.indexOf(peek()) >= 0
        ? "write the minus as a plain hyphen with a space on both sides: `a - b`"
        : otherwise;
  }

  private String usualHint() {
    char next = peek();
    if (DASHES.indexOf(next) >= 0) {
      return hintOr("");
    }
    return atEnd()
        ? "go on with a length, such as `3/4 in`, or the name of a size"
        : FormulaHints.at(text, at).orElse(UNITS_HINT);
  }

  FormulaFault unexpected(String expected, String hint) {
    int start = at();
    int end = start;
    while (end < text.length() && text.charAt(end) != ' ') {
      end++;
    }
    String found = start == end ? "the end" : "'" + Quote.of(text.substring(start, end)) + "'";
    return new FormulaFault(
        SYNTAX,
        new Stretch(start, Math.max(end, start + 1)),
        "expected " + expected + ", found " + found,
        hint);
  }

  private Optional<Matcher> match(Pattern pattern) {
    skipSpaces();
    return matchHere(pattern);
  }

  private Optional<Matcher> matchHere(Pattern pattern) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    matcher.useTransparentBounds(true);
    return matcher.lookingAt() ? Optional.of(matcher) : Optional.empty();
  }

  private void skipSpaces() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }
}
