package storyrod.drawing;

import java.util.Arrays;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.words.Words;

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
        .filter(other -> haunch(other).equals(haunch(tenon)))
        .findFirst();
  }

  /** Where a haunch stays and how far it reaches; nothing without one. */
  private static String haunch(Cut.Tenon tenon) {
    return tenon
        .haunch()
        .map(each -> each.side() + " " + each.width() + " " + each.box().size(tenon.from().axis()))
        .orElse("");
  }

  /** Whether an equal one on the opposite end is dimensioned in its place. */
  static boolean isToldByTwin(FlatPart flat, Cut.Tenon tenon) {
    return tenon.from().sign() > 0 && twin(flat, tenon).isPresent();
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

  /** Thickness, width unless it is as wide as the part, and length. */
  static String size(Cut.Tenon tenon, LengthFormat format, Words words) {
    Box box = tenon.tenon();
    Axis width = Axis.other(tenon.from().axis(), Axis.Y);
    String thick = format.format(box.size(Axis.Y));
    String length = format.format(tenon.length());
    return box.on(width).equals(tenon.end().on(width))
        ? words.say("size.two", thick, length)
        : words.say("size.three", thick, format.format(box.size(width)), length);
  }
}
