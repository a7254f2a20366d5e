package storyrod.description;

import java.util.Arrays;
import java.util.Optional;

/**
 * A description's text with the name under which messages speak of it. Lines and columns are
 * counted from 1; a column counts characters as a person does, whatever they are stored as.
 */
public final class SourceText {
  private final String file;
  private final String text;
  private final int[] lineStarts;
  private final Optional<Span> usedAt;

  /**
   * Takes a text, lines ended by {@code \n} or {@code \r\n}.
   *
   * @param file the file's name as the user gave it, for messages only
   */
  public SourceText(String file, String text) {
    this(file, text, Optional.empty());
  }

  private SourceText(String file, String text, Optional<Span> usedAt) {
    this.file = file;
    this.text = text;
    this.lineStarts = lineStarts(text);
    this.usedAt = usedAt;
  }

  /** The same text, taken as a sub-assembly by a line of another description. */
  public SourceText usedAt(Span line) {
    return new SourceText(file, text, Optional.of(line));
  }

  /** The place in another description that takes this one as a sub-assembly. */
  public Optional<Span> usedAt() {
    return usedAt;
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[1 + (int) text.chars().filter(c -> c == '\n').count()];
    for (int line = 1; line < starts.length; line++) {
      starts[line] = text.indexOf('\n', starts[line - 1]) + 1;
    }
    return starts;
  }

  public String file() {
    return file;
  }

  public String text() {
    return text;
  }

  /** The line of a position in the text. */
  public int lineOf(int offset) {
    int found = Arrays.binarySearch(lineStarts, inside(offset));
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** The column of a position in the text. */
  public int columnOf(int offset) {
    int start = lineStart(lineOf(offset));
    return 1 + text.codePointCount(start, inside(offset));
  }

  /** The text of a line without its end; empty past the last line. */
  public String line(int number) {
    if (number < 1 || number > lineStarts.length) {
      return "";
    }
    return text.substring(lineStart(number), lineEnd(number)).stripTrailing();
  }

  /** The position of a line's first character. */
  int lineStart(int number) {
    return lineStarts[number - 1];
  }

  private int lineEnd(int number) {
    return number < lineStarts.length ? lineStarts[number] : text.length();
  }

  private int inside(int offset) {
    return Math.clamp(offset, 0, text.length());
  }

  /** Whether file and text are the same, wherever they are used. */
  @Override
  public boolean equals(Object other) {
    return other == this
        || other instanceof SourceText that && file.equals(that.file) && text.equals(that.text);
  }

  @Override
  public int hashCode() {
    return 31 * file.hashCode() + text.hashCode();
  }

  @Override
  public String toString() {
    return file;
  }
}
