package storyrod.piece;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/**
 * A point in a face of a part, which the description gives by its places on two axes.
 *
 * @param places what is given for an axis, if anything
 */
record PointOnFace(Blank blank, Face face, Function<Axis, Optional<Length>> places) {
  /** The first axis of the face on which no place is given. */
  Optional<Axis> missing() {
    return Arrays.stream(Axis.values())
        .filter(axis -> axis != face.axis() && places.apply(axis).isEmpty())
        .findFirst();
  }

  /** The point, of which no place is missing. */
  Point point() {
    Point point = Point.ORIGIN.with(face.axis(), blank.box().at(face));
    for (Axis axis : Axis.values()) {
      if (axis != face.axis()) {
        point = point.with(axis, places.apply(axis).orElseThrow());
      }
    }
    return point;
  }
}
