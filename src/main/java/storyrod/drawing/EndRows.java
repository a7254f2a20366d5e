package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Dovetails;

/** The rows of tails, pins and fingers at a part's ends, which a drawing must show large enough. */
final class EndRows {
  /** The narrowest pin or finger is at least so wide on the paper, in mm: clear of a wide line. */
  private static final double LEAST_MM = 3;

  private EndRows() {}

  /** The smallest of some scales that shows all rows of a part clearly, as a factor; or 0. */
  static double enough(FlatPart flat, List<Scale> scales) {
    double narrowest = narrowestMm(flat);
    return narrowest == Double.POSITIVE_INFINITY
        ? 0
        : scales.stream()
            .mapToDouble(Scale::factor)
            .filter(factor -> factor * narrowest >= LEAST_MM)
            .min()
            .orElse(1);
  }

  /** The narrowest pin or finger of a part, infinite where there is none. */
  static double narrowestMm(FlatPart flat) {
    Stream<Length> pins = flat.cuts(Dovetails.class).stream().flatMap(each -> each.pins().stream());
    Stream<Length> fingers = flat.cuts(Comb.class).stream().map(Comb::finger);
    return Stream.concat(pins, fingers)
        .mapToDouble(Length::toMm)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
