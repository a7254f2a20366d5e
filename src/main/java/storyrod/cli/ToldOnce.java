package storyrod.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;

/**
 * Prints diagnostics for the screen: warnings and advice that differ only in the numbers of parts,
 * such as those of {@code slat-1} and {@code slat-2}, are told once, with the lines of the others.
 * Errors are all told.
 */
final class ToldOnce {
  private static final Pattern NUMBER = Pattern.compile("(?<=[A-Za-z])-[0-9]+(?![\\w-])");

  private ToldOnce() {}

  /** All of them, each line ended by {@code \n}, with the counts of all at the end. */
  static String print(List<Diagnostic> diagnostics) {
    Map<List<Object>, List<Diagnostic>> alike = new LinkedHashMap<>();
    diagnostics.forEach(
        each -> alike.computeIfAbsent(key(each), key -> new ArrayList<>()).add(each));
    String text = alike.values().stream().map(ToldOnce::told).collect(Collectors.joining());
    return text + DiagnosticPrinter.counts(diagnostics) + "\n";
  }

  private static List<Object> key(Diagnostic each) {
    return each.isError()
        ? List.of(each)
        : List.of(
            each.severity(),
            each.code(),
            unnumbered(each.message()),
            each.hints().stream().map(ToldOnce::unnumbered).toList());
  }

  private static String unnumbered(String text) {
    return NUMBER.matcher(text).replaceAll("-n");
  }

  private static String told(List<Diagnostic> alike) {
    Diagnostic first = alike.getFirst();
    String text = DiagnosticPrinter.print(first);
    if (alike.size() > 1) {
      text += "  and %d more like it at %s\n".formatted(alike.size() - 1, lines(first, alike));
    }
    return text + "\n";
  }

  private static String lines(Diagnostic first, List<Diagnostic> alike) {
    List<String> lines = alike.stream().skip(1).map(each -> line(first, each)).distinct().toList();
    return (lines.size() == 1 ? "line " : "lines ") + String.join(", ", lines);
  }

  /** The number of a line, and its file if that is another. */
  private static String line(Diagnostic first, Diagnostic other) {
    String file = other.at().source().file();
    boolean isSame = file.equals(first.at().source().file());
    return other.at().line() + (isSame ? "" : " of " + file);
  }
}
