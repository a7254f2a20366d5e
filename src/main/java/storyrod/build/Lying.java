package storyrod.build;

import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * On which face the piece lies while something is put to it: what comes from below, or from the
 * front, finds it on its back, what comes from behind on its front. What waits for the finish, such
 * as drawers, comes to a piece that stands.
 */
final class Lying {
  static final Face UPRIGHT = Face.BOTTOM;

  private final Late late;

  Lying(Late late) {
    this.late = late;
  }

  /** The face on which the piece has to lie for a unit; empty where it may lie as it does. */
  Optional<Face> needed(Placing placing) {
    boolean isFree = placing.standing().isEmpty() || isFromTheSide(placing);
    return isFree && !late.isLate(placing.unit())
        ? Optional.empty()
        : Optional.of(placing.enters().map(way -> needed(placing, way)).orElse(UPRIGHT));
  }

  private Face needed(Placing placing, Face way) {
    boolean isOfPiece = placing.unit().level().equals(Unit.PIECE);
    return late.isLate(placing.unit()) || !isOfPiece
        ? UPRIGHT
        : switch (way) {
          case TOP, BACK -> Face.BACK;
          case FRONT -> Face.FRONT;
          case BOTTOM, LEFT, RIGHT -> UPRIGHT;
        };
  }

  boolean isLaidDown(Placing placing) {
    return needed(placing).filter(face -> face != UPRIGHT).isPresent();
  }

  /**
   * The face on which the piece lies in a step. What comes in from a side comes as well while it
   * lies: it is left as the step before had it, for it may not be able to stand yet.
   */
  Face down(Placing placing, Step step, List<Step> before) {
    return needed(placing)
        .orElseGet(
            () ->
                before.isEmpty() || !isOnePiece(before.getLast(), step)
                    ? UPRIGHT
                    : before.getLast().down());
  }

  private static boolean isOnePiece(Step earlier, Step later) {
    return earlier.verb() == Verb.FIT && later.standing().containsAll(earlier.newParts());
  }

  private static boolean isFromTheSide(Placing placing) {
    return placing.enters().filter(way -> way.axis() == Axis.X).isPresent();
  }
}
