package storyrod.drawing;

import java.util.Optional;

/** When a drawing that has a page to itself lies on one that is wider than high. */
final class TurnedPage {
  /** How much larger a drawing must be there than upright. */
  private static final double WORTH = 1.2;

  private TurnedPage() {}

  /** The drawing on a turned page, if it is clearly larger than one that is upright. */
  static Optional<Drawing> ifLarger(Optional<Drawing> turned, Drawing upright) {
    return turned.filter(each -> each.factor() >= WORTH * upright.factor());
  }

  /** The larger of the two. */
  static Drawing larger(Optional<Drawing> turned, Drawing upright) {
    return ifLarger(turned, upright).orElse(upright);
  }
}
