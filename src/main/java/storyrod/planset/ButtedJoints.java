package storyrod.planset;

import java.util.Comparator;
import java.util.stream.Stream;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** Tells joints in which one part is let into the other from those where plain faces meet. */
record ButtedJoints(Piece piece) {
  /** Whether neither part is let into the other. */
  boolean have(Joint joint) {
    return takingIn(joint).findFirst().isEmpty() && !isLetIn(joint.second(), joint.first());
  }

  /** The cuts that take in a joint's first part, those of the joint itself first. */
  Stream<Cut> takingIn(Joint joint) {
    return piece.part(joint.second()).cuts().stream()
        .filter(Cut::takesIn)
        .filter(cut -> cut.isFor(joint.first()))
        .sorted(Comparator.comparing(cut -> !cut.at().equals(joint.at())));
  }

  private boolean isLetIn(String part, String other) {
    return piece.part(other).cuts().stream().anyMatch(cut -> cut.takesIn() && cut.isFor(part));
  }
}
