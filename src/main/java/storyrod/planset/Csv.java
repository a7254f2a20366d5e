package storyrod.planset;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Comma-separated values as RFC 4180 has them: CRLF, quotes doubled, UTF-8. A text that a
 * spreadsheet would take for a formula gets an apostrophe before it.
 */
final class Csv {
  /**
   * Signs with which a formula can begin, wide forms with them, and what is skipped before them.
   */
  private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  /** Without it spreadsheets read a file in the code page of their machine, not as UTF-8. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final Pattern BARE_FRACTION = Pattern.compile("\\d+/\\d+");

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

  /** The same for a double click: marked as UTF-8. */
  byte[] spreadsheet() {
    return (BYTE_ORDER_MARK + text).getBytes(StandardCharsets.UTF_8);
  }

  /** A size as printed, so that a spreadsheet does not take 3/4 for a day in March. */
  static String size(String printed) {
    return BARE_FRACTION.matcher(printed).matches() ? "0 " + printed : printed;
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
