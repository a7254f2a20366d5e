package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Segment;
import storyrod.geometry.Segment.Arc;
import storyrod.geometry.Segment.Line;
import storyrod.measure.Length;

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

  /** Goes to a point in an arc. */
  void arc(Point through, Point to) {
    segments.add(new Arc(stops.getLast(), through, to));
    stops.add(to);
  }

  /** Goes round a corner with a radius, from one side to the next. */
  void rounded(Point corner, Face before, Face after, Length radius) {
    to(corner.moved(after.axis(), radius.times(-after.sign())));
    Length in = Length.nearest(radius.toMm() * (1 - Math.sqrt(0.5)));
    Point middle =
        corner
            .moved(before.axis(), in.times(-before.sign()))
            .moved(after.axis(), in.times(-after.sign()));
    arc(middle, corner.moved(before.axis(), radius.times(-before.sign())));
  }

  /** The path from its last point back to its first. */
  List<Segment> closed() {
    to(stops.getFirst());
    return List.copyOf(segments);
  }
}
