package storyrod.description;

/** Brings what a user wrote into a message: one line, never long. */
final class Quote {
  private static final int LONGEST = 60;

  private Quote() {}

  static String of(String text) {
    int[] shown = text.codePoints().limit(LONGEST).map(Quote::printable).toArray();
    String start = new String(shown, 0, shown.length);
    return text.codePointCount(0, Math.min(text.length(), 4 * LONGEST)) > LONGEST
        ? start + "…"
        : start;
  }

  /** The character itself, or one that can be shown in its place. */
  static int printable(int codePoint) {
    if (codePoint == '\n' || codePoint == '\t' || codePoint == '\r') {
      return ' ';
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          '\uFFFD';
      default -> codePoint;
    };
  }
}
