package storyrod.planset;

import storyrod.measure.Unit;

/**
 * A sheet of paper, upright: US letter (ASME Y14.1, 8 1/2 x 11 in) for inches, A4 (ISO 216) for
 * millimetres.
 *
 * @param sideMm the margin left and right
 * @param topMm from the paper's edge to the text, the running head between them
 * @param bottomMm from the text to the paper's edge, the foot between them
 */
public record Paper(double widthMm, double heightMm, double sideMm, double topMm, double bottomMm) {
  public static final Paper LETTER = new Paper(215.9, 279.4, 17, 28, 24);
  public static final Paper A4 = new Paper(210, 297, 17, 28, 24);

  public static Paper usualFor(Unit unit) {
    return switch (unit) {
      case INCH -> LETTER;
      case MM -> A4;
    };
  }

  public double textWidthMm() {
    return widthMm - 2 * sideMm;
  }

  public double textHeightMm() {
    return heightMm - topMm - bottomMm;
  }

  /**
   * The height for things that are set on pages by their measured heights, with a little to spare.
   */
  double roomMm() {
    return textHeightMm() - 3;
  }
}
