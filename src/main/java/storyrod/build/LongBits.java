package storyrod.build;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/**
 * Where a bit of the usual length brings the drill's chuck against wood beside its hole. All is
 * worked out at once, for steps are written side by side.
 */
public final class LongBits {
  private final Map<Joint, Set<String>> cramping;

  public LongBits(Piece piece) {
    Driving driving = new Driving(piece.parts());
    Map<Joint, Set<String>> found = new LinkedHashMap<>();
    piece.joints().stream()
        .filter(joint -> isThroughHoles(piece, joint))
        .forEach(joint -> found.put(joint, driving.cramping(joint)));
    this.cramping = Map.copyOf(found);
  }

  /** Whether some of the screws that a step drives into holes of their own want a long bit. */
  public boolean areWanted(Step step) {
    Set<String> there = new LinkedHashSet<>(step.standing());
    there.addAll(step.newParts());
    return step.operations().stream()
        .flatMap(operation -> operation.joints().stream())
        .flatMap(joint -> cramping.getOrDefault(joint, Set.of()).stream())
        .anyMatch(there::contains);
  }

  /** Pocket holes are screwed with a long driver anyway. */
  private static boolean isThroughHoles(Piece piece, Joint joint) {
    return joint.driven().stream()
        .flatMap(driven -> piece.part(driven.part()).cuts(Cut.Holes.class).stream())
        .anyMatch(holes -> holes.at().equals(joint.at()));
  }
}
