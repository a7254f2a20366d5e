package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.RunningDimension;

/** Where dimension lines stand on a drawing. */
final class DimensionLines {
  private DimensionLines() {}

  /** First line at least 10 mm off, the next at least 8 mm further (ISO 129-1, from memory). */
  static void assertKeepDistance(List<Dimension> all) {
    for (Dimension one : all) {
      double off = Math.min(away(one, one.from()), away(one, one.to()));
      assertTrue(off > 10 - 1e-6, one + " is " + off + " off");
      for (Dimension other : all) {
        double between = Math.abs(one.line() - other.line());
        boolean clash = one.alongX() == other.alongX() && between > 1e-6 && overlap(one, other);
        assertTrue(!clash || between > 8 - 1e-6, one + " and " + other);
      }
    }
  }

  /** Running dimensions as single ones, each from the origin; these share their line. */
  static List<Dimension> each(RunningDimension running) {
    return running.heights().stream()
        .map(
            height ->
                new Dimension(
                    running.origin(),
                    height.to(),
                    false,
                    running.line(),
                    height.text(),
                    height.measure()))
        .toList();
  }

  /** All sizes that a drawing gives. */
  static List<Dimension> all(Drawing drawing) {
    Stream<Dimension> running =
        Clean.running(drawing).stream().flatMap(found -> each(found).stream());
    return Stream.concat(Clean.dimensions(drawing).stream(), running).toList();
  }

  static double lengthMm(Dimension dimension) {
    return span(dimension)[1] - span(dimension)[0];
  }

  private static double away(Dimension dimension, Drawing.At point) {
    return Math.abs(dimension.line() - (dimension.alongX() ? point.y() : point.x()));
  }

  private static double[] span(Dimension d) {
    double from = d.alongX() ? d.from().x() : d.from().y();
    double to = d.alongX() ? d.to().x() : d.to().y();
    return new double[] {Math.min(from, to), Math.max(from, to)};
  }

  private static boolean overlap(Dimension one, Dimension other) {
    return span(one)[0] < span(other)[1] - 1e-6 && span(other)[0] < span(one)[1] - 1e-6;
  }
}
