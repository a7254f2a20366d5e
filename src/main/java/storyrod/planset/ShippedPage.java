package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.description.SourceText;
import storyrod.planset.ShownText.Line;

/**
 * A sub-assembly that comes with the tool as the reference shows it: the remark at its head, what a
 * user may set, and its whole text.
 */
public record ShippedPage(String name, String about, List<Group> groups, List<Line> text) {
  /** The sections that a user may give values to; a description has some of them. */
  private static final List<String> SECTIONS =
      List.of("sizes", "numbers", "choices", "options", "stock", "items");

  private static final Pattern SECTION = Pattern.compile("([a-z-]+):\\s*(?:#.*)?");
  private static final Pattern MEMBER = Pattern.compile("( +)([a-z][a-z0-9-]*):\\s*(.*)");

  public ShippedPage {
    groups = List.copyOf(groups);
    text = List.copyOf(text);
  }

  /** The names of one section with their values and remarks. */
  public record Group(String section, List<Setting> settings) {}

  /** A value that a user may set. */
  public record Setting(String name, String value, String remark) {}

  static ShippedPage of(SourceText source) {
    List<String> lines = source.text().lines().toList();
    return new ShippedPage(
        source.file().replace(".yaml", ""),
        String.join(
            " ",
            lines.stream()
                .takeWhile(line -> line.startsWith("#"))
                .map(ShippedPage::words)
                .filter(words -> !words.isEmpty())
                .toList()),
        SECTIONS.stream().flatMap(section -> group(section, lines).stream()).toList(),
        lines.stream().map(ShownText::line).toList());
  }

  private static String words(String remark) {
    return remark.replaceFirst("^#+", "").strip();
  }

  private static List<Group> group(String section, List<String> lines) {
    List<Setting> settings = new ArrayList<>();
    boolean inside = false;
    int indent = 0;
    for (String line : lines) {
      Matcher head = SECTION.matcher(line);
      Matcher member = MEMBER.matcher(line);
      if (head.matches() || !line.isBlank() && !line.startsWith(" ") && !line.startsWith("#")) {
        inside = head.matches() && head.group(1).equals(section);
        indent = 0;
      } else if (inside && member.matches()) {
        indent = indent == 0 ? member.group(1).length() : indent;
        if (member.group(1).length() == indent) {
          Line value = ShownText.line(member.group(3));
          settings.add(new Setting(member.group(2), value.code().strip(), words(value.remark())));
        }
      }
    }
    return settings.isEmpty() ? List.of() : List.of(new Group(section, settings));
  }
}
