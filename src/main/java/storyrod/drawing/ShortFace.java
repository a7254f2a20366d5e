package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Line;

/**
 * The face of a part on the paper, long ones with their middle left out.
 *
 * @param at where the part's left bottom corner lies
 * @param factor mm on the paper for one of the part
 */
record ShortFace(double lengthMm, double widthMm, At at, double factor) {
  /** A face longer than so many times its width has its middle left out. */
  private static final double LONGEST = 4;

  /** Between the two ends, as a share of the width. */
  private static final double GAP = 0.15;

  /** A stretch of the part, and by how much it is moved along on the full-size drawing. */
  record Window(double from, double to, double moved) {}

  static double shape(double lengthMm, double widthMm) {
    return Math.min(lengthMm / widthMm, LONGEST + GAP);
  }

  /** As large as a room allows, at its left, in the middle of its height. */
  static ShortFace in(Bounds room, double lengthMm, double widthMm) {
    double shape = shape(lengthMm, widthMm);
    double factor = Math.min(room.width() / shape, room.height()) / widthMm;
    double down = (room.height() + factor * widthMm) / 2;
    return new ShortFace(lengthMm, widthMm, new At(room.left(), room.top() + down), factor);
  }

  private boolean isBroken() {
    return lengthMm > (LONGEST + GAP) * widthMm;
  }

  List<Window> windows() {
    double half = LONGEST / 2 * widthMm;
    return isBroken()
        ? List.of(
            new Window(0, half, 0),
            new Window(lengthMm - half, lengthMm, 2 * half + GAP * widthMm - lengthMm))
        : List.of(new Window(0, lengthMm, 0));
  }

  /** A point of the part that stands in a window, on the paper. */
  At on(Window window, double x, double y) {
    return at.plus((x + window.moved) * factor, -y * factor);
  }

  Bounds bounds() {
    double wide = shape(lengthMm, widthMm) * widthMm * factor;
    return new Bounds(at.x(), at.y() - widthMm * factor, at.x() + wide, at.y());
  }

  /** The rectangle of each window. */
  List<Bounds> rectangles() {
    return windows().stream()
        .map(each -> Bounds.of(on(each, each.from, 0), on(each, each.to, widthMm)))
        .toList();
  }

  /** A line with a kink where the middle is left out. */
  Optional<Line> breakLine() {
    Bounds left = rectangles().getFirst();
    double x = left.right() + GAP * widthMm * factor / 2;
    return isBroken() ? Optional.of(BreakLine.of(x, left.top(), left.bottom())) : Optional.empty();
  }
}
