package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;

/** Lines of small text below figures. */
final class SmallLines {
  /** From one line to the next. */
  static final double LINE_MM = 3.6;

  /** Between words; a fraction stays with its whole number, and what is in brackets with both. */
  private static final Pattern WORDS = Pattern.compile(" (?!\\d+/\\d|\\[)");

  private SmallLines() {}

  /** Texts in lines of some width in mm at most, but for a word that is wider. */
  static List<String> within(double widthMm, List<String> texts) {
    return texts.stream().flatMap(each -> within(widthMm, each).stream()).toList();
  }

  private static List<String> within(double widthMm, String text) {
    List<String> lines = new ArrayList<>();
    for (String word : WORDS.split(text)) {
      String longer = lines.isEmpty() ? word : lines.getLast() + " " + word;
      boolean fits = TextSetting.of(TextStyle.SMALL, longer).width() <= widthMm;
      if (fits && !lines.isEmpty()) {
        lines.set(lines.size() - 1, longer);
      } else {
        lines.add(word);
      }
    }
    return lines;
  }

  /** Lines of which the last begins at a point of the paper. */
  static List<Element> endingAt(At last, List<String> lines) {
    return IntStream.range(0, lines.size())
        .<Element>mapToObj(
            i -> {
              At at = last.plus(0, -(lines.size() - 1 - i) * LINE_MM);
              return new Text(TextStyle.SMALL, at, Anchor.START, true, lines.get(i));
            })
        .toList();
  }
}
