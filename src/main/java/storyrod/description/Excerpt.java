package storyrod.description;

/**
 * A line of a description as it is shown, with marks under a place in it. Long lines are cut to a
 * window round the place; what has no shape of its own is shown as a blank.
 */
record Excerpt(String line, String marks) {
  private static final int WIDEST = 96;
  private static final int LEAD = 32;
  private static final int FIRST_PICTOGRAM = 0x1F300;

  static Excerpt of(Span at) {
    int[] line = at.source().line(at.line()).codePoints().map(Quote::printable).toArray();
    int start = Math.min(at.column() - 1, line.length);
    int marked = at.source().text().codePointCount(inside(at, at.start()), inside(at, at.end()));
    int end = Math.max(start + 1, Math.min(start + marked, line.length));
    int from = line.length <= WIDEST ? 0 : Math.clamp(start - LEAD, 0, line.length - WIDEST);
    int to = Math.min(line.length, from + WIDEST);
    return window(
        line, new Stretch(from, to), new Stretch(start, Math.min(end, Math.max(to, start + 1))));
  }

  private record Stretch(int from, int to) {}

  private static int inside(Span at, int offset) {
    return Math.clamp(offset, 0, at.source().text().length());
  }

  private static Excerpt window(int[] line, Stretch shown, Stretch marked) {
    String before = shown.from() > 0 ? "…" : "";
    String after = shown.to() < line.length ? "…" : "";
    String text = new String(line, shown.from(), shown.to() - shown.from());
    int lead = before.length() + width(line, shown.from(), marked.from());
    int marks = Math.max(1, width(line, marked.from(), marked.to()));
    return new Excerpt(before + text + after, " ".repeat(lead) + "^".repeat(marks));
  }

  private static int width(int[] line, int from, int to) {
    int width = 0;
    for (int i = from; i < Math.min(to, line.length); i++) {
      width += width(line[i]);
    }
    return width;
  }

  /** How many columns a terminal gives a character. */
  private static int width(int codePoint) {
    int type = Character.getType(codePoint);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    return codePoint >= FIRST_PICTOGRAM || Character.isIdeographic(codePoint) ? 2 : 1;
  }
}
