package storyrod.build;

import java.util.List;
import storyrod.description.Description;
import storyrod.description.Description.ItemKind;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** Which units come when the finish is on: those that nothing joins, and tops on top fasteners. */
public record Late(Description description, List<Joint> joints) {
  static Late of(Piece piece) {
    return new Late(piece.description(), piece.joints());
  }

  /** 0 for what goes in last of all, 1 for a top, 2 for the rest. */
  int rank(Unit unit) {
    return isLoose(unit) ? 0 : isTop(unit) ? 1 : 2;
  }

  /** Whether it only lies or hangs in the piece. */
  public boolean isLoose(Unit unit) {
    return unit.level().equals(Unit.PIECE) && outer(unit).isEmpty();
  }

  /** Whether only top fasteners hold it. */
  public boolean isTop(Unit unit) {
    List<Joint> outer = outer(unit);
    return unit.level().equals(Unit.PIECE)
        && !outer.isEmpty()
        && outer.stream().allMatch(this::isTopFastened);
  }

  private boolean isTopFastened(Joint joint) {
    return !joint.glued()
        && joint.fasteners().stream()
            .map(fastener -> description.items().get(fastener.item()))
            .anyMatch(item -> item != null && item.kind() == ItemKind.TOP_FASTENER);
  }

  private List<Joint> outer(Unit unit) {
    return joints.stream()
        .filter(joint -> unit.has(joint.first()) != unit.has(joint.second()))
        .toList();
  }
}
