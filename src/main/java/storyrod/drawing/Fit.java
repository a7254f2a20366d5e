package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Stroke;

/**
 * Puts a view on paper: at full size times a factor, then moved.
 *
 * @param turned whether the view is first turned by a quarter, so that its right lies above
 */
record Fit(double factor, double dx, double dy, boolean turned) {
  Fit(double factor, double dx, double dy) {
    this(factor, dx, dy, false);
  }

  /** The largest fit of some points into a rectangle of the paper, in its middle. */
  static Fit into(List<At> points, At corner, Size room) {
    double minX = points.stream().mapToDouble(At::x).min().orElse(0);
    double maxX = points.stream().mapToDouble(At::x).max().orElse(0);
    double minY = points.stream().mapToDouble(At::y).min().orElse(0);
    double maxY = points.stream().mapToDouble(At::y).max().orElse(0);
    double factor =
        Math.min(
            room.widthMm() / Math.max(maxX - minX, 1), room.heightMm() / Math.max(maxY - minY, 1));
    double dx = corner.x() + room.widthMm() / 2 - factor * (minX + maxX) / 2;
    double dy = corner.y() + room.heightMm() / 2 - factor * (minY + maxY) / 2;
    return new Fit(factor, dx, dy);
  }

  static Stream<At> ends(Stroke stroke) {
    return Stream.of(stroke.from(), stroke.to());
  }

  At on(At view) {
    return turned
        ? new At(dx + factor * view.y(), dy - factor * view.x())
        : new At(dx + factor * view.x(), dy + factor * view.y());
  }

  List<At> on(List<At> view) {
    return view.stream().map(this::on).toList();
  }
}
