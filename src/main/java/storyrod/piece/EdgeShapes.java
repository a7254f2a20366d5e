package storyrod.piece;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Entry;
import storyrod.geometry.Axis;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * What makes a part's outline more than a rectangle: hollows, crowns and rounded corners.
 *
 * @param crowns how much lower the ends of a crowned side lie than its middle
 */
record EdgeShapes(
    Rectangle rectangle,
    Map<Face, List<Hollow>> hollows,
    Map<Face, Length> crowns,
    Map<Edge, Rounding> roundings) {
  /** An arc cut into a side. */
  record Hollow(Range range, Length rise, Entry entry) {}

  /** A rounded corner. */
  record Rounding(Length radius, Entry entry) {}

  /** The hollows of a side, from its low end. */
  List<Hollow> hollows(Face side) {
    return hollows.getOrDefault(side, List.of()).stream()
        .sorted(Comparator.comparing(hollow -> hollow.range().from()))
        .toList();
  }

  boolean isCrowned(Face side) {
    return crowns.containsKey(side);
  }

  Optional<Rounding> rounding(Face one, Face other) {
    return Optional.ofNullable(roundings.get(new Edge(one, other)));
  }

  /** The radius of a corner; zero where it is sharp. */
  Length radius(Face one, Face other) {
    return rounding(one, other).map(Rounding::radius).orElse(Length.ZERO);
  }

  /** Where the corners of a side lie; those of a crowned one lie further in. */
  Length level(Face side) {
    return rectangle.inwards(side, crowns.getOrDefault(side, Length.ZERO));
  }

  /** From corner to corner on an axis. */
  Range room(Axis axis) {
    return new Range(level(Face.of(axis, -1)), level(Face.of(axis, 1)));
  }
}
