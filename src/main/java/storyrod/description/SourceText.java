package storyrod.description;

import java.util.Arrays;

/**
 * A description's text with the name under which messages speak of it.
 *
 * @param file the file's name as the user gave it, for messages only
 * @param text the whole text, lines ended by {@code \n} or {@code \r\n}
 */
public record SourceText(String file, String text) {
  /** The line, counted from 1, of a position in the text. */
  public int lineOf(int offset) {
    return 1 + (int) text.chars().limit(Math.min(offset, text.length())).filter(c -> c == '\n').count();
  }

  /** The column, counted from 1, of a position in the text. */
  public int columnOf(int offset) {
    int at = Math.min(offset, text.length());
    return at - text.lastIndexOf('\n', at - 1);
  }

  /** The text of a line counted from 1, without its end; empty past the last line. */
  public String line(int number) {
    return Arrays.stream(text.split("\n", -1)).skip(number - 1L).findFirst().orElse("").stripTrailing();
  }
}
