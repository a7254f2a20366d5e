package storyrod.drawing;

import java.util.List;
import storyrod.geometry.Axis;

/** A stile, rail or leg, of which a scale that holds the whole length leaves hardly a line. */
final class SlimPart {
  /** The width on the paper that leaves room for lines between its edges, in mm. */
  static final double WIDE_ENOUGH_MM = 8;

  /** So many times as long as wide, a part is slim. */
  private static final int SLIM = 6;

  private SlimPart() {}

  static boolean is(FlatPart flat) {
    return !flat.size(Axis.X).isShorterThan(flat.size(Axis.Z).times(SLIM));
  }

  /** The smallest of some scales that shows a slim part wide enough, as a factor; else 0. */
  static double enough(FlatPart flat, List<Scale> scales) {
    if (!is(flat)) {
      return 0;
    }
    double width = flat.size(Axis.Z).toMm();
    return scales.stream()
        .mapToDouble(Scale::factor)
        .filter(factor -> factor * width >= WIDE_ENOUGH_MM)
        .min()
        .orElse(1);
  }
}
