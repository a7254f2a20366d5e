package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Line;

/** Cuts lines and areas off at the sides of a rectangle. */
final class Clipping {
  /** What rounding may move a point by. */
  private static final double HAIR_MM = 1e-6;

  private Clipping() {}

  /** Whether something of a line lies inside; most lines tell by where they turn. */
  static boolean holds(Bounds window, TruePath path) {
    return path.stretches().stream().anyMatch(each -> isWithin(each.from(), window))
        || path.reach().widened(HAIR_MM).overlaps(window)
            && !inside(path.points(), window).isEmpty();
  }

  private static boolean isWithin(At at, Bounds window) {
    return window.left() < at.x()
        && at.x() < window.right()
        && window.top() < at.y()
        && at.y() < window.bottom();
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

  /** What is left of a line, an area or a circle; other elements stay whole or go. */
  static List<Element> inside(Element element, Bounds window) {
    return switch (element) {
      case Line line ->
          inside(line.points(), window).stream()
              .<Element>map(points -> new Line(line.role(), points))
              .toList();
      case Area area -> area(area, window);
      case Ellipse round -> whole(round, around(round), window);
      default ->
          whole(
              element,
              Lowering.simple(element).stream()
                  .flatMap(each -> Paper.stretches(each).stream())
                  .map(each -> Bounds.NONE.with(each.from()).with(each.to()))
                  .reduce(Bounds.NONE, Bounds::with),
              window);
    };
  }

  private static List<Element> whole(Element element, Bounds room, Bounds window) {
    return room.isIn(window) ? List.of(element) : List.of();
  }

  private static Bounds around(Ellipse round) {
    double reach = Math.max(round.rx(), round.ry());
    return Bounds.NONE.with(round.centre()).widened(reach);
  }

  private static List<Element> area(Area area, Bounds window) {
    List<List<At>> rings =
        area.rings().stream()
            .map(ring -> ring(ring, window))
            .filter(ring -> ring.size() > 2)
            .toList();
    return rings.isEmpty() ? List.of() : List.of(new Area(area.tone(), rings));
  }

  /** A ring cut off at one side of the window after the other. */
  private static List<At> ring(List<At> ring, Bounds window) {
    List<At> left = cutOff(ring, at -> at.x() - window.left());
    left = cutOff(left, at -> window.right() - at.x());
    left = cutOff(left, at -> at.y() - window.top());
    return cutOff(left, at -> window.bottom() - at.y());
  }

  private static List<At> cutOff(List<At> ring, ToDoubleFunction<At> inside) {
    List<At> left = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      At from = ring.get(i);
      At to = ring.get((i + 1) % ring.size());
      double before = inside.applyAsDouble(from);
      double after = inside.applyAsDouble(to);
      if (before >= 0) {
        left.add(from);
      }
      if (before * after < 0) {
        double share = before / (before - after);
        left.add(from.plus((to.x() - from.x()) * share, (to.y() - from.y()) * share));
      }
    }
    return left;
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
