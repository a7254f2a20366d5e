package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Joint;

/** Places of equal things, spread evenly. */
final class Spread {
  private Spread() {}

  /** Along the middle of where two parts meet, on the longer axis across another one. */
  static List<Point> alongContact(Joint joint, Axis across, int count) {
    Axis along =
        Stream.of(Axis.values())
            .filter(axis -> axis != across)
            .max(Comparator.comparing(joint.contact()::size))
            .orElseThrow();
    return over(joint.contact().on(along), count).stream()
        .map(at -> joint.contact().middle().with(along, at))
        .toList();
  }

  /** The middles of equal shares of a stretch. */
  static List<Length> over(Range whole, int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> whole.length().toMm() * (2 * i + 1) / (2 * count))
        .map(mm -> whole.from().plus(Length.nearest(mm)))
        .toList();
  }
}
