package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import storyrod.geometry.Point;
import storyrod.geometry.Segment;
import storyrod.geometry.Segment.Arc;
import storyrod.geometry.Segment.Line;

/** Draws a closed path; steps of no length leave no trace. */
final class Pencil {
  private final List<Segment> segments = new ArrayList<>();
  private final List<Point> stops = new ArrayList<>();

  /** Goes to a point in a straight line; the first point is where the path starts. */
  void to(Point to) {
    if (stops.isEmpty()) {
      stops.add(to);
    } else if (!stops.getLast().equals(to)) {
      segments.add(new Line(stops.getLast(), to));
      stops.add(to);
    }
  }

  void arc(Point through, Point to) {
    segments.add(new Arc(stops.getLast(), through, to));
    stops.add(to);
  }

  List<Segment> closed() {
    to(stops.getFirst());
    return List.copyOf(segments);
  }
}
