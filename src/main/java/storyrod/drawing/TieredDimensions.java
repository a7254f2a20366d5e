package storyrod.drawing;

import storyrod.drawing.Drawing.Dimension;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/** Puts dimensions round a rectangle, each on the nearest tier that has room for it. */
record TieredDimensions(Paper paper, Bounds round, LengthFormat format) {
  static final double FIRST_MM = 10;
  static final double NEXT_MM = 8;
  private static final int MOST_TIERS = 6;

  /**
   * Adds the dimension of a stretch that runs along the paper's x or y; none of no length.
   *
   * @param side below zero for a line above or left of the rectangle, above zero for one below it
   *     or at its right
   */
  void place(Paper.Stretch measured, Length measure, int side) {
    for (int tier = 0; tier < MOST_TIERS && !measure.isZero(); tier++) {
      Dimension dimension = dimension(measured, measure, side * (FIRST_MM + tier * NEXT_MM));
      if (paper.hasRoomFor(dimension) || tier == MOST_TIERS - 1) {
        paper.add(dimension);
        return;
      }
    }
  }

  private Dimension dimension(Paper.Stretch measured, Length measure, double off) {
    boolean alongX = measured.from().y() == measured.to().y();
    double near = alongX ? round.top() : round.left();
    double far = alongX ? round.bottom() : round.right();
    double line = (off > 0 ? far : near) + off;
    return new Dimension(
        measured.from(), measured.to(), alongX, line, format.format(measure), measure);
  }
}
