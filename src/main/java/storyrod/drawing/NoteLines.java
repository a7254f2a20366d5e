package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import storyrod.drawing.Drawing.TextStyle;

/** The words of a note in lines, with the width of the longest in mm. */
record NoteLines(List<String> lines, double width) {
  private static final double NARROW = 30;

  /** The same few notes are set at every scale that is tried. */
  private static final Map<Key, List<NoteLines>> MEMORY = new ConcurrentHashMap<>();

  private static final int REMEMBERED = 2000;

  private record Key(String words, double widest) {}

  private static NoteLines of(List<String> lines) {
    double width =
        lines.stream()
            .mapToDouble(each -> TextSetting.of(TextStyle.NOTE, each).width())
            .max()
            .orElseThrow();
    return new NoteLines(lines, width);
  }

  /** For each number of lines the narrowest, so that no last line holds a single word. */
  static List<NoteLines> ways(String words, double widest) {
    if (MEMORY.size() > REMEMBERED) {
      MEMORY.clear();
    }
    return MEMORY.computeIfAbsent(new Key(words, widest), NoteLines::ways);
  }

  private static List<NoteLines> ways(Key key) {
    Map<Integer, NoteLines> ways = new TreeMap<>();
    for (double width = key.widest; width >= NARROW; width -= 2) {
      NoteLines lines = of(wrapped(key.words, width));
      ways.merge(lines.lines.size(), lines, (one, other) -> other.width < one.width ? other : one);
    }
    return List.copyOf(ways.values());
  }

  /** The words in lines of some width in mm. */
  private static List<String> wrapped(String words, double widest) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words.split("(?<![\\dØ]) (?!deep|in\\b)|(?<=[,×]) ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      boolean fits = TextSetting.of(TextStyle.NOTE, longer).width() <= widest;
      if (!fits && !line.isEmpty()) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }
}
