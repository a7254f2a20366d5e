package storyrod.planset;

import java.util.List;
import storyrod.description.SourceText;

/** The part of a description that a reader is shown, remarks apart from the rest of a line. */
public final class ShownText {
  private static final String FROM = "# show";
  private static final String TO = "# end";

  private ShownText() {}

  /** A line: what is read by the tool, and the remark behind it with its sign. */
  public record Line(String code, String remark) {}

  /** The lines between {@code # show} and {@code # end}, or all if there is no such line. */
  static List<Line> shown(SourceText source) {
    List<String> lines = source.text().lines().toList();
    int from = lines.indexOf(FROM) + 1;
    int end = lines.indexOf(TO);
    return lines.subList(from, end < 0 ? lines.size() : end).stream().map(ShownText::line).toList();
  }

  static Line line(String line) {
    int at = remark(line);
    return new Line(line.substring(0, at), line.substring(at));
  }

  /** Where a remark begins: a number sign behind a space and outside quotes; else the end. */
  private static int remark(String line) {
    char quote = ' ';
    for (int i = 0; i < line.length(); i++) {
      char next = line.charAt(i);
      boolean first = i == 0 || " {[,".indexOf(line.charAt(i - 1)) >= 0;
      if (quote != ' ') {
        quote = next == quote ? ' ' : quote;
      } else if ((next == '"' || next == '\'') && first) {
        quote = next;
      } else if (next == '#' && (i == 0 || line.charAt(i - 1) == ' ')) {
        return i;
      }
    }
    return line.length();
  }
}
