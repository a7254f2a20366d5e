package storyrod.drawing;

import java.util.List;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;

/** A thin line with a kink, where wood that goes on is left out (ISO 128-2). */
final class BreakLine {
  private static final double OVER_MM = 1;
  private static final double WIDE_MM = 0.7;
  private static final double KINK_MM = 0.4;

  private BreakLine() {}

  /** The same, level at y. */
  static Line level(double y, double left, double right) {
    return new Line(
        Role.DIMENSION,
        of(y, left, right).points().stream().map(at -> new At(at.y(), at.x())).toList());
  }

  /** At x, over some height and a little beyond, in mm on the paper. */
  static Line of(double x, double top, double bottom) {
    double middle = (top + bottom) / 2;
    return new Line(
        Role.DIMENSION,
        List.of(
            new At(x, top - OVER_MM),
            new At(x, middle - OVER_MM),
            new At(x - WIDE_MM, middle - KINK_MM),
            new At(x + WIDE_MM, middle + KINK_MM),
            new At(x, middle + OVER_MM),
            new At(x, bottom + OVER_MM)));
  }
}
