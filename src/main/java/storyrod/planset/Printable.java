package storyrod.planset;

import storyrod.drawing.Fonts;

/** Which characters a plan set can show, on its pages and in its drawings. */
public final class Printable {
  private static final String SPACES = "\t\n\r";

  private Printable() {}

  /** Whether a character, by its code point, has a glyph in the embedded fonts. */
  public static boolean has(int codePoint) {
    if (codePoint < 0x7F) {
      return codePoint >= ' ' || SPACES.indexOf(codePoint) >= 0;
    }
    return TextRuns.isPrintable(codePoint) && Fonts.has(codePoint);
  }
}
