package storyrod.drawing;

import java.util.Arrays;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.piece.Cut;

/** Where tenons and tongues are shown; of two equal ones on opposite ends, one stands for both. */
final class Tenons {
  private Tenons() {}

  /** The view in which its thickness and its width are dimensioned, and its note stands. */
  static Face home(FlatPart flat, Cut.Tenon tenon) {
    Face usual = tenon.from().axis() == Axis.X ? Face.RIGHT : Face.BOTTOM;
    return tenon.from() == usual || twin(flat, tenon).isPresent() ? usual : usual.opposite();
  }

  /** The equal one on the opposite end. */
  private static Optional<Cut.Tenon> twin(FlatPart flat, Cut.Tenon tenon) {
    return flat.cuts(Cut.Tenon.class).stream()
        .filter(other -> other.from() == tenon.from().opposite())
        .filter(other -> other.term().equals(tenon.term()))
        .filter(other -> other.length().equals(tenon.length()))
        .filter(
            other ->
                Arrays.stream(Axis.values())
                    .filter(axis -> axis != tenon.from().axis())
                    .allMatch(axis -> other.tenon().on(axis).equals(tenon.tenon().on(axis))))
        .findFirst();
  }

  /**
   * The stretch to dimension along its part: its length, or for the second of two equal ones the
   * distance between the shoulders.
   */
  static Range toMeasure(FlatPart flat, Cut.Tenon tenon) {
    Range own = tenon.tenon().on(tenon.from().axis());
    return twin(flat, tenon)
        .filter(other -> tenon.from().sign() > 0)
        .map(other -> new Range(other.tenon().on(tenon.from().axis()).to(), own.from()))
        .orElse(own);
  }

  /** The middle of it, on its end. */
  static Point middle(Cut.Tenon tenon) {
    return tenon.tenon().middle().with(tenon.from().axis(), tenon.tenon().at(tenon.from()));
  }
}
