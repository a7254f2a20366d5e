package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic.Place;

/**
 * Prints diagnostics for a person: file, line and column, the message, the line with a mark under
 * the place, second places, and what to do.
 */
public final class DiagnosticPrinter {
  private static final int LEAST_DIGITS = 4;

  private DiagnosticPrinter() {}

  /** All of them, each line ended by {@code \n}, with their counts at the end. */
  public static String print(List<Diagnostic> diagnostics) {
    StringBuilder text = new StringBuilder();
    diagnostics.forEach(each -> text.append(print(each)).append('\n'));
    return text.append(counts(diagnostics)).append('\n').toString();
  }

  /** One diagnostic, each line ended by {@code \n}. */
  public static String print(Diagnostic diagnostic) {
    List<String> lines = new ArrayList<>();
    lines.add(head(diagnostic));
    int digits = digits(diagnostic);
    Excerpt main = Excerpt.of(diagnostic.at());
    if (!main.line().isBlank()) {
      lines.add(numbered(diagnostic.at().line(), digits) + main.line());
      lines.add(" ".repeat(digits + 2) + " | " + main.marks());
    }
    diagnostic.also().forEach(place -> lines.add(second(place, diagnostic, digits)));
    lines.addAll(chain(diagnostic.at()));
    diagnostic.hints().forEach(hint -> lines.add("  hint: " + hint));
    return String.join("\n", lines) + "\n";
  }

  private static String head(Diagnostic diagnostic) {
    return diagnostic.at()
        + ": "
        + diagnostic.severity().word()
        + ": "
        + diagnostic.message()
        + " ["
        + diagnostic.code()
        + "]";
  }

  private static String second(Place place, Diagnostic diagnostic, int digits) {
    String line = numbered(place.at().line(), digits) + Excerpt.of(place.at()).line();
    boolean elsewhere = !place.at().source().file().equals(diagnostic.at().source().file());
    String file = elsewhere ? "in " + place.at().source().file() + ": " : "";
    return line + "    " + file + place.remark();
  }

  /** How the description at fault came to be used, from the inside out. */
  private static List<String> chain(Span at) {
    List<String> lines = new ArrayList<>();
    Span inner = at;
    while (inner.source().usedAt().isPresent()) {
      Span outer = inner.source().usedAt().get();
      lines.add(
          "  in use: %s, line %d, from %s:%d"
              .formatted(inner.source().file(), inner.line(), outer.source().file(), outer.line()));
      inner = outer;
    }
    return lines;
  }

  private static int digits(Diagnostic diagnostic) {
    int largest =
        diagnostic.also().stream()
            .mapToInt(place -> place.at().line())
            .reduce(diagnostic.at().line(), Math::max);
    return Math.max(LEAST_DIGITS - 2, String.valueOf(largest).length());
  }

  private static String numbered(int line, int digits) {
    String number = String.valueOf(line);
    return "  " + " ".repeat(digits - number.length()) + number + " | ";
  }

  /** {@code 2 errors, 1 warning}; {@code no faults} if there are none. */
  public static String counts(List<Diagnostic> diagnostics) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = diagnostics.stream().filter(each -> each.severity() == severity).count();
      if (count > 0) {
        counts.add(count + " " + counted(severity, count));
      }
    }
    return counts.isEmpty() ? "no faults" : String.join(", ", counts);
  }

  private static String counted(Severity severity, long count) {
    return switch (severity) {
      case ERROR, WARNING -> severity.word() + (count == 1 ? "" : "s");
      case ADVICE -> count == 1 ? "piece of advice" : "pieces of advice";
    };
  }
}
