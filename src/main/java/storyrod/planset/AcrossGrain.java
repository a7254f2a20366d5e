package storyrod.planset;

import java.util.stream.Stream;
import storyrod.build.Traits;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.TrenchRole;

/** Finds joints that let wood move across the grain of what holds it, as a breadboard end does. */
record AcrossGrain(Piece piece) {
  /** Whether a joint holds, unglued, by a groove right across the first part's grain. */
  boolean isDry(Joint joint) {
    Part first = piece.part(joint.first());
    Part second = piece.part(joint.second());
    return joint.holding()
        && !joint.glued()
        && first.length() != second.length()
        && Stream.of(first, second).noneMatch(Traits::isSheet)
        && second.cuts().stream().anyMatch(cut -> isGrooveFor(cut, joint.first()));
  }

  private static boolean isGrooveFor(Cut cut, String part) {
    return TrenchRole.GROOVE.isOf(cut) && cut.isFor(part);
  }
}
