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

  /** A shorter line has a smaller kink. */
  private static final double SHORT_MM = 8;

  private BreakLine() {}

  /** The same, level at y. */
  static Line level(double y, double left, double right) {
    return new Line(
        Role.DIMENSION,
        of(y, left, right).points().stream().map(at -> new At(at.y(), at.x())).toList());
  }

  /** At x, over some height and a little beyond, in mm on the paper. */
  static Line of(double x, double top, double bottom) {
    return between(new At(x, top - OVER_MM), new At(x, bottom + OVER_MM));
  }

  /** From point to point. */
  static Line between(At from, At to) {
    double length = from.distance(to);
    double kink = Math.min(1, length / SHORT_MM) / length;
    At along = new At(kink * (to.x() - from.x()), kink * (to.y() - from.y()));
    At middle = new At((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
    return new Line(
        Role.DIMENSION,
        List.of(
            from,
            beside(middle, along, -OVER_MM, 0),
            beside(middle, along, -KINK_MM, WIDE_MM),
            beside(middle, along, KINK_MM, -WIDE_MM),
            beside(middle, along, OVER_MM, 0),
            to));
  }

  private static At beside(At at, At along, double onMm, double asideMm) {
    return at.plus(onMm * along.x() - asideMm * along.y(), onMm * along.y() + asideMm * along.x());
  }
}
