package storyrod.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads comma-separated values by the rules of RFC 4180, with or without a byte order mark. */
final class Rows {
  private static final Pattern CELL = Pattern.compile("(?:\"((?:[^\"]|\"\")*)\"|([^,\"]*))(,|$)");

  private Rows() {}

  /** Each row's cells by the names in the header. */
  static List<Map<String, String>> of(byte[] csv) {
    String text = new String(csv, StandardCharsets.UTF_8).replaceFirst("^\uFEFF", "");
    List<String> lines = List.of(text.split("\r\n", -1));
    List<String> header = cells(lines.getFirst());
    List<Map<String, String>> rows = new ArrayList<>();
    for (String line : lines.subList(1, lines.size() - 1)) {
      List<String> cells = cells(line);
      if (cells.size() != header.size()) {
        throw new AssertionError(header.size() + " cells expected: " + line);
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        row.put(header.get(i), cells.get(i));
      }
      rows.add(row);
    }
    return rows;
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    Matcher cell = CELL.matcher(line);
    boolean more = true;
    while (more && cell.find()) {
      cells.add(cell.group(1) == null ? cell.group(2) : cell.group(1).replace("\"\"", "\""));
      more = cell.group(3).equals(",");
    }
    return cells;
  }
}
