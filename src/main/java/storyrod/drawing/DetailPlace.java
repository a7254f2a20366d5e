package storyrod.drawing;

import java.util.Optional;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;

/** Looks for room for a detail: beside the views rather than below them, high rather than low. */
record DetailPlace(Paper paper, Details.Room room) {
  private static final double GRID = 3;
  private static final double APART = 4;
  private static final double PER_HEIGHT = 8;
  private static final double PER_WIDTH = 0.3;

  /** The detail moved to where it is free; nothing if there is no room. */
  Optional<Element> placed(Group detail) {
    Paper own = new Paper();
    own.add(detail);
    Bounds size = own.bounds();
    Bounds now = paper.bounds();
    double least = Double.POSITIVE_INFINITY;
    Optional<Element> best = Optional.empty();
    for (double y = now.top(); y <= now.bottom() + APART; y += GRID) {
      double right = now.left() + room.area().widthMm();
      for (double x = now.right() - room.area().widthMm(); x + size.width() < right; x += GRID) {
        Bounds place = new Bounds(x, y, x + size.width(), y + size.height());
        double cost = cost(place, now);
        if (cost < least && isFree(place, now)) {
          least = cost;
          best = Optional.of(Moved.by(detail, x - size.left(), y - size.top()));
        }
      }
    }
    return best;
  }

  private static double cost(Bounds place, Bounds now) {
    Bounds all = now.with(place);
    return (all.height() - now.height()) * PER_HEIGHT
        + (all.width() - now.width()) * PER_WIDTH
        + (place.top() - now.top())
        + 0.1 * Math.abs(place.left() - now.left());
  }

  private boolean isFree(Bounds place, Bounds now) {
    Bounds wide = place.widened(APART);
    return new FreePlace(paper, room.area()).fits(place, now)
        && new FreePlace(paper, room.area()).isFree(wide.widened(-0.8))
        && room.views().stream().noneMatch(view -> overlap(view, wide));
  }

  private static boolean overlap(Bounds one, Bounds other) {
    Bounds both = one.within(other);
    return both.width() > 0 && both.height() > 0;
  }
}
