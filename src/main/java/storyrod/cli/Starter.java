package storyrod.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import storyrod.description.SourceText;

/**
 * A small project to begin from. Its text holds lines for one unit only, which begin with {@code
 * inch| } or {@code mm| }; all others are for both.
 */
record Starter(String name, String text) {
  private static final String FOLDER = "starter";
  static final List<String> UNITS = List.of("inch", "mm");

  static List<String> names() {
    return Shipped.all(FOLDER).stream()
        .map(SourceText::file)
        .map(file -> file.replace(".yaml", ""))
        .toList();
  }

  static Starter named(String name) {
    return new Starter(name, Shipped.read(FOLDER, name).text());
  }

  /** The description of a project of its own, under a title made of the project's name. */
  String description(String project, String unit) {
    String words = project.replace('-', ' ');
    String title = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    return text.lines()
        .filter(line -> UNITS.stream().noneMatch(u -> !u.equals(unit) && line.startsWith(u + "| ")))
        .map(line -> line.startsWith(unit + "| ") ? line.substring(unit.length() + 2) : line)
        .map(line -> line.replace("PROJECT", title))
        .collect(Collectors.joining("\n", "", "\n"));
  }
}
