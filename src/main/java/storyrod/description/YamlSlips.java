package storyrod.description;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;

/** Finds the usual slip behind a fault that YAML tells only some way further on. */
final class YamlSlips {
  private static final String CODE = "yaml";
  private static final Pattern NO_SPACE = Pattern.compile("( *(?:- )?[A-Za-z][\\w-]*):([^\\s:].*)");
  private static final Pattern EQUALS =
      Pattern.compile("( *(?:- )?[A-Za-z][\\w-]*) *= *([^\\s=].*)");
  private static final Pattern PARENTHESIS =
      Pattern.compile("( *(?:- )?[A-Za-z][\\w-]*: *)\\(.*:.*");

  private static final Pattern GLUED = Pattern.compile("([A-Za-z][\\w-]*):(\\S.*)");
  private static final Pattern NO_COLON =
      Pattern.compile("( *)([a-z][a-z0-9-]*)(?: +([^\\s:#][^:#]*))?");

  private YamlSlips() {}

  /** Inside braces {@code width:24} is one word, and YAML takes it for a key without a value. */
  static Member split(Member member, Diagnostics diagnostics) {
    Scalar key = member.key();
    Matcher glued = GLUED.matcher(key.text());
    boolean isEmpty = member.value() instanceof Scalar value && value.text().isEmpty();
    if (key.quoted() || !isEmpty || !glued.matches()) {
      return member;
    }
    int colon = glued.end(1);
    diagnostics.add(
        Diagnostic.error(CODE, key.part(colon, colon + 1), "expected a space behind this colon")
            .hint("write " + pair(glued)));
    return new Member(
        new Scalar(glued.group(1), false, key.part(0, colon)),
        new Scalar(glued.group(2), false, key.part(colon + 1, key.text().length())));
  }

  /** The slip in the line of a colon that cannot stand there, or in the one above. */
  static Optional<Diagnostic> near(SourceText source, int at) {
    int line = source.lineOf(at);
    return Optional.of(line - 1)
        .filter(above -> above > 0)
        .flatMap(above -> inLine(source, above))
        .or(() -> inLine(source, line))
        .or(() -> noColon(source, line));
  }

  /** A line without a colon, which YAML reads on into the next. */
  private static Optional<Diagnostic> noColon(SourceText source, int line) {
    Matcher above = NO_COLON.matcher(line > 1 ? source.line(line - 1).stripTrailing() : "");
    boolean isFirst = line == 2 || isKeyBefore(source.line(line - 2), above);
    if (!above.matches() || !isFirst) {
      return Optional.empty();
    }
    String value = Optional.ofNullable(above.group(3)).map(each -> " " + each).orElse("");
    int end = above.end(2);
    return Optional.of(
        error(source, line - 1, Math.max(0, end - 1), "expected a colon behind this")
            .hint("write `" + Quote.of(above.group(2) + ":" + value) + "`"));
  }

  /** Whether a line is no text that the next one could go on with. */
  private static boolean isKeyBefore(String line, Matcher next) {
    boolean opens = line.stripTrailing().endsWith(":");
    boolean besides =
        next.matches()
            && line.matches(" *[a-z][a-z0-9-]*:( .*)?")
            && line.indexOf(line.strip()) == next.group(1).length();
    return line.isBlank() || line.strip().startsWith("#") || opens || besides;
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
