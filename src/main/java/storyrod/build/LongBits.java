package storyrod.build;

import java.util.LinkedHashSet;
import java.util.Set;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** Where a bit of the usual length brings the drill's chuck against wood beside its hole. */
public final class LongBits {
  private final Piece piece;
  private final Driving driving;

  public LongBits(Piece piece) {
    this.piece = piece;
    this.driving = new Driving(piece.parts());
  }

  /** Whether some of the screws that a step drives into holes of their own want a long bit. */
  public boolean areWanted(Step step) {
    Set<String> there = new LinkedHashSet<>(step.standing());
    there.addAll(step.newParts());
    return step.operations().stream()
        .flatMap(operation -> operation.joints().stream())
        .filter(this::isThroughHoles)
        .anyMatch(joint -> driving.isCramped(joint, there::contains));
  }

  /** Pocket holes are screwed with a long driver anyway. */
  private boolean isThroughHoles(Joint joint) {
    return joint.driven().stream()
        .flatMap(driven -> piece.part(driven.part()).cuts(Cut.Holes.class).stream())
        .anyMatch(holes -> holes.at().equals(joint.at()));
  }
}
