package storyrod.description;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the usual slip behind a fault that YAML tells only some way further on. */
final class YamlSlips {
  private static final String CODE = "yaml";
  private static final Pattern NO_SPACE = Pattern.compile("( *(?:- )?[A-Za-z][\\w-]*):([^\\s:].*)");
  private static final Pattern EQUALS =
      Pattern.compile("( *(?:- )?[A-Za-z][\\w-]*) *= *([^\\s=].*)");
  private static final Pattern PARENTHESIS =
      Pattern.compile("( *(?:- )?[A-Za-z][\\w-]*: *)\\(.*:.*");

  private YamlSlips() {}

  /** The slip in the line of a colon that cannot stand there, or in the one above. */
  static Optional<Diagnostic> near(SourceText source, int at) {
    int line = source.lineOf(at);
    return Optional.of(line - 1)
        .filter(above -> above > 0)
        .flatMap(above -> inLine(source, above))
        .or(() -> inLine(source, line));
  }

  private static Optional<Diagnostic> inLine(SourceText source, int line) {
    String text = source.line(line);
    Matcher glued = NO_SPACE.matcher(text);
    if (glued.matches()) {
      return Optional.of(
          error(source, line, glued.end(1), "expected a space behind this colon")
              .hint("write " + pair(glued)));
    }
    Matcher equals = EQUALS.matcher(text);
    if (equals.matches()) {
      return Optional.of(
          error(source, line, text.indexOf('='), "expected a colon, found '='")
              .hint("write " + pair(equals)));
    }
    Matcher parenthesis = PARENTHESIS.matcher(text);
    return parenthesis.matches()
        ? Optional.of(
            error(source, line, parenthesis.end(1), "expected a brace, found '('")
                .hint("put keys on one line between braces: `{key: value, key: value}`"))
        : Optional.empty();
  }

  private static String pair(Matcher slip) {
    String key = slip.group(1).replaceFirst("^ *(- )?", "").strip();
    return "`" + Quote.of(key + ": " + slip.group(2).strip()) + "`";
  }

  /** A semicolon where a comma should be, between an opening bracket and the fault. */
  static Optional<Diagnostic> semicolon(SourceText source, int opening, int at) {
    int found = source.text().lastIndexOf(';', Math.max(0, at));
    int comma = source.text().lastIndexOf(',', Math.max(0, at));
    return found > opening && found > comma
        ? Optional.of(
            Diagnostic.error(
                    CODE, new Span(source, found, found + 1), "expected a comma, found ';'")
                .hint("put a comma between two keys inside braces"))
        : Optional.empty();
  }

  private static Diagnostic error(SourceText source, int line, int column, String message) {
    int at = source.lineStart(line) + column;
    return Diagnostic.error(CODE, new Span(source, at, at + 1), message);
  }
}
