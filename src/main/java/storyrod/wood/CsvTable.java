package storyrod.wood;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads our own tables: comment lines, a line of column names, then rows; fields may be quoted. */
final class CsvTable {
  private static final Pattern FIELD = Pattern.compile("\\G(?:\"([^\"]*)\"|([^,\"]*))(,|$)");

  private CsvTable() {}

  static List<Map<String, String>> read(String resource) {
    List<String> lines =
        text(resource).lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    List<String> names = fields(lines.getFirst());
    return lines.stream().skip(1).map(line -> row(names, fields(line))).toList();
  }

  private static String text(String resource) {
    try (InputStream in = CsvTable.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("bug: the table " + resource + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String> fields(String line) {
    List<String> fields = new ArrayList<>();
    Matcher matcher = FIELD.matcher(line);
    while (matcher.find()) {
      fields.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
      if (matcher.group(3).isEmpty()) {
        return fields;
      }
    }
    throw new IllegalStateException("bug: not a line of a table: " + line);
  }

  private static Map<String, String> row(List<String> names, List<String> fields) {
    if (names.size() != fields.size()) {
      throw new IllegalStateException(
          "bug: " + fields.size() + " fields instead of " + names.size() + ": " + fields);
    }
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      row.put(names.get(i), fields.get(i));
    }
    return row;
  }
}
