package storyrod.planset;

import java.util.Locale;

/**
 * A text of the user's that holds a character which none of the plan set's fonts can print. It is
 * the user's to mend; the command turns it into a diagnostic.
 */
public final class UnprintableTextException extends RuntimeException {
  private static final long serialVersionUID = 1;
  private final int codePoint;
  private final String text;

  UnprintableTextException(int codePoint, String text) {
    super(describe(codePoint) + " in '" + text + "' cannot be printed");
    this.codePoint = codePoint;
    this.text = text;
  }

  public int codePoint() {
    return codePoint;
  }

  /** The text in which the character stands. */
  public String text() {
    return text;
  }

  private static String describe(int codePoint) {
    return String.format(Locale.ROOT, "the character U+%04X", codePoint);
  }
}
