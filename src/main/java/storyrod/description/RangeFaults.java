package storyrod.description;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.description.Expression.Name;
import storyrod.description.Expression.Operation;
import storyrod.description.Expression.Stretch;

/** What is wrong with a text that should say from where to where something runs. */
final class RangeFaults {
  private static final String USUAL = "write where it starts and ends: `0 to 12`";
  private static final Pattern OTHER_WORD =
      Pattern.compile(
          "(\\.{2,}|[:;,…→]|[–—](?!.*\\bto\\b)|->|until\\b|till\\b|through\\b|and\\b|up to\\b) *");

  private RangeFaults() {}

  /** Of a start behind which no {@code to} stands. */
  static FormulaFault noEnd(String text, Expression start, FormulaScanner scanner) {
    if (scanner.atEnd()) {
      return new FormulaFault(
          FormulaScanner.SYNTAX,
          new Stretch(0, text.length()),
          "expected where it starts and ends, found one length",
          onlyOne(text, start));
    }
    return scanner.unexpected(
        "`to` and where it ends", otherWord(text, start, scanner.at(), scanner.hintOr(USUAL)));
  }

  /** A minus between two values was mostly meant to be the way from one to the other. */
  private static String onlyOne(String text, Expression start) {
    if (start instanceof Operation both && both.operator() == '-') {
      String from = text.substring(0, both.left().at().to()).strip();
      String to = text.substring(both.right().at().from()).strip();
      return "a minus makes a difference; did you mean `%s to %s`?".formatted(from, to);
    }
    return "write from where to where, such as `0 to " + Quote.of(text.strip()) + "`";
  }

  private static String otherWord(String text, Expression start, int at, String otherwise) {
    if (start instanceof Name name && name.path().equals("from")) {
      return "leave `from` away: `" + Quote.of(text.substring(at).strip()) + "`";
    }
    Matcher other = OTHER_WORD.matcher(text).region(at, text.length());
    return other.lookingAt()
        ? "write `to` between start and end: `%s to %s`"
            .formatted(
                Quote.of(text.substring(0, at).strip()),
                Quote.of(text.substring(other.end()).strip()))
        : otherwise;
  }
}
