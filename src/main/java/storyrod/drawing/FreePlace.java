package storyrod.drawing;

import java.util.Optional;
import storyrod.drawing.Drawing.At;

/** Looks for free room on the paper, as near as can be to where it is wished for. */
record FreePlace(Paper paper, Size area) {
  private static final double GRID = 1.5;
  private static final double REACH = 70;
  private static final double CLEAR = 0.8;
  private static final double PER_GROWTH = 3;

  /** The top left corner of a free rectangle. */
  Optional<At> near(At wished, double width, double height) {
    Optional<At> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    Bounds now = paper.bounds();
    for (double dy = -REACH; dy <= REACH; dy += GRID) {
      for (double dx = -REACH; dx <= REACH; dx += GRID) {
        At at = wished.plus(dx, dy);
        Bounds room = new Bounds(at.x(), at.y(), at.x() + width, at.y() + height);
        double cost = Math.hypot(dx, 2 * dy) + PER_GROWTH * growth(room, now);
        if (cost < least && fits(room, now) && isFree(room)) {
          least = cost;
          best = Optional.of(at);
        }
      }
    }
    return best;
  }

  private static double growth(Bounds room, Bounds now) {
    Bounds all = now.with(room);
    return all.width() - now.width() + all.height() - now.height();
  }

  boolean fits(Bounds room, Bounds now) {
    Bounds all = now.with(room);
    return all.width() <= area.widthMm() - 2 && all.height() <= area.heightMm() - 2;
  }

  boolean isFree(Bounds room) {
    return paper.isFree(
        new PlacedText("", 1, room.left(), room.top(), room.right(), room.bottom()).widened(CLEAR));
  }
}
