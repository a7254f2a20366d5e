package storyrod.planset;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Comma-separated values as RFC 4180 has them: CRLF, quotes doubled, UTF-8. A text that a
 * spreadsheet would take for a formula gets an apostrophe before it.
 */
final class Csv {
  private static final String FORMULA_STARTS = "=+-@\t\r";
  private final StringBuilder text = new StringBuilder();

  Csv(String... header) {
    text.append(String.join(",", header)).append("\r\n");
  }

  Csv row(List<?> cells) {
    text.append(cells.stream().map(Csv::cell).collect(Collectors.joining(","))).append("\r\n");
    return this;
  }

  byte[] bytes() {
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String cell(Object value) {
    return value instanceof Number ? value.toString() : quoted(defused(value.toString()));
  }

  private static String defused(String value) {
    return !value.isEmpty() && FORMULA_STARTS.indexOf(value.charAt(0)) >= 0 ? "'" + value : value;
  }

  private static String quoted(String value) {
    return value.chars().anyMatch(c -> ",\"\r\n".indexOf(c) >= 0)
        ? '"' + value.replace("\"", "\"\"") + '"'
        : value;
  }
}
