package storyrod.drawing;

/**
 * What stands on the paper before any note.
 *
 * @param paper the lines and texts
 * @param strewn points along these
 * @param taken the bounds of it
 * @param area the paper that all may take
 * @param within where texts may stand
 * @param dimensions the dimensions
 */
record NoteGround(
    Paper.Layer paper,
    Strewn strewn,
    Bounds taken,
    Size area,
    Bounds within,
    DrawnDimensions dimensions) {
  /** Where leaders may end if texts begin no farther from there: all has to fit the area. */
  Bounds elbows(double beside) {
    double wide = area.widthMm() - 1;
    double high = area.heightMm() - 1;
    return new Bounds(
            taken.right() - wide, taken.bottom() - high, taken.left() + wide, taken.top() + high)
        .within(within)
        .widened(beside);
  }

  boolean holds(Bounds text) {
    return text.isIn(within) && fits(text, taken);
  }

  /** Whether a text and all else fit the area. */
  boolean fits(Bounds text, Bounds all) {
    return width(text, all) <= area.widthMm() - 1 && height(text, all) <= area.heightMm() - 1;
  }

  /** By how much a text makes all larger, in mm. */
  static double growth(Bounds text, Bounds all) {
    return width(text, all) - all.width() + height(text, all) - all.height();
  }

  private static double width(Bounds text, Bounds all) {
    return Math.max(text.right(), all.right()) - Math.min(text.left(), all.left());
  }

  private static double height(Bounds text, Bounds all) {
    return Math.max(text.bottom(), all.bottom()) - Math.min(text.top(), all.top());
  }

  boolean isFree(PlacedText room) {
    return !strewn.anyIn(room) && paper.isFree(room);
  }
}
