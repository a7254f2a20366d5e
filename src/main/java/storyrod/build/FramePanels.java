package storyrod.build;

import java.util.List;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Panels that lie in the grooves of rails and stiles, as in a door: no sander gets into the corners
 * between them once the frame is closed (common practice).
 */
public final class FramePanels {
  private static final int SIDES = 3;

  private final Piece piece;

  public FramePanels(Piece piece) {
    this.piece = piece;
  }

  /** The parts in whose plane a panel lies, each with a groove for it; empty for any other part. */
  public List<Part> frame(Part panel) {
    List<Part> round =
        piece.joints().stream()
            .filter(joint -> joint.first().equals(panel.name()))
            .filter(joint -> !joint.holding() && !joint.slides())
            .map(Joint::second)
            .distinct()
            .map(piece::part)
            .filter(part -> part.thickness() == panel.thickness())
            .toList();
    return round.size() < SIDES ? List.of() : round;
  }

  boolean has(Part part) {
    return !frame(part).isEmpty();
  }
}
