package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.At;

/** Cuts lines off at the sides of a rectangle. */
final class Clipping {
  private Clipping() {}

  /** Whether something of a line lies inside. */
  static boolean holds(Bounds window, TruePath path) {
    return !inside(path.points(), window).isEmpty();
  }

  /** The parts of a chain of points inside a rectangle, as chains. */
  static List<List<At>> inside(List<At> points, Bounds window) {
    List<List<At>> chains = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      Optional<Seen.Stroke> inside = inside(points.get(i), points.get(i + 1), window);
      if (inside.isPresent()) {
        At from = inside.get().from();
        boolean runsOn = !chains.isEmpty() && chains.getLast().getLast().distance(from) < 1e-9;
        if (!runsOn) {
          chains.add(new ArrayList<>(List.of(from)));
        }
        chains.getLast().add(inside.get().to());
      }
    }
    return chains;
  }

  private static Optional<Seen.Stroke> inside(At from, At to, Bounds window) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double[] share = {0, 1};
    boolean inside =
        clip(share, -dx, from.x() - window.left())
            && clip(share, dx, window.right() - from.x())
            && clip(share, -dy, from.y() - window.top())
            && clip(share, dy, window.bottom() - from.y());
    return inside && share[1] > share[0]
        ? Optional.of(new Seen.Stroke(from, to).between(share[0], share[1]))
        : Optional.empty();
  }

  /** Narrows the shares of a stretch to where {@code towards * share <= room}. */
  private static boolean clip(double[] share, double towards, double room) {
    if (towards == 0) {
      return room >= 0;
    }
    double at = room / towards;
    if (towards > 0) {
      share[1] = Math.min(share[1], at);
    } else {
      share[0] = Math.max(share[0], at);
    }
    return share[0] <= share[1];
  }
}
