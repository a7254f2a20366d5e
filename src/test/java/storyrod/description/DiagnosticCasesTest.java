package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each file in {@code cases/diagnostics} says in comments which faults its next line has: {@code #
 * error: 16-20 MESSAGE [CODE]}, the columns first, then {@code # also: LINE REMARK} and {@code #
 * hint: WORDS}, of which words may be left out at the end with {@code ...}. A place that no comment
 * can stand before is given as {@code # error: LINE:16-20}. A missing or extra fault fails.
 */
class DiagnosticCasesTest {
  private static final Path CASES = Path.of("src/test/resources/cases/diagnostics");
  private static final Pattern EXPECTED =
      Pattern.compile("\\s*# (error|warning|advice|also|hint): (.*)");
  private static final Pattern ABSOLUTE = Pattern.compile("(\\d+):(\\d.*)");

  static Stream<Path> cases() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyFaultIsReportedAndNoOther(Path file) {
    String text = Bench.read(file);
    List<String> expected = expected(text);
    List<String> found =
        Bench.faults(text).stream().flatMap(fault -> told(fault).stream()).toList();
    assertEquals(joined(expected), joined(shortened(found, expected)), () -> file.toString());
  }

  @Test
  void thereAreEnoughCases() throws IOException {
    assertTrue(cases().count() >= 35);
  }

  private static String joined(List<String> lines) {
    return String.join("\n", lines);
  }

  private static List<String> expected(String text) {
    List<String> expected = new ArrayList<>();
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      Matcher comment = EXPECTED.matcher(lines.get(i));
      if (comment.matches()) {
        expected.add(line(comment, target(lines, i)));
      }
    }
    return expected;
  }

  private static String line(Matcher comment, int target) {
    String kind = comment.group(1);
    boolean placed = ABSOLUTE.matcher(comment.group(2)).matches();
    boolean relative = !kind.equals("hint") && !kind.equals("also") && !placed;
    return kind + ": " + (relative ? target + ":" : "") + comment.group(2);
  }

  private static int target(List<String> lines, int comment) {
    int next = comment;
    while (next < lines.size() && EXPECTED.matcher(lines.get(next)).matches()) {
      next++;
    }
    return next + 1;
  }

  private static List<String> told(Diagnostic fault) {
    List<String> told = new ArrayList<>();
    told.add(
        fault.severity().word()
            + ": "
            + place(fault.at())
            + " "
            + fault.message()
            + " ["
            + fault.code()
            + "]");
    fault.also().forEach(place -> told.add("also: " + place.at().line() + " " + place.remark()));
    fault.hints().forEach(hint -> told.add("hint: " + hint));
    return told;
  }

  private static String place(Span at) {
    int length = Math.max(1, Excerpt.of(at).marks().strip().length());
    String last = length == 1 ? "" : "-" + (at.column() + length - 1);
    return at.line() + ":" + at.column() + last;
  }

  /** Cuts what was found to as much as is expected of it. */
  private static List<String> shortened(List<String> found, List<String> expected) {
    List<String> shortened = new ArrayList<>(found);
    for (int i = 0; i < Math.min(found.size(), expected.size()); i++) {
      String start = expected.get(i).replaceAll("\\.\\.\\.$", "");
      if (expected.get(i).endsWith("...") && found.get(i).startsWith(start)) {
        shortened.set(i, expected.get(i));
      }
    }
    return shortened;
  }
}
