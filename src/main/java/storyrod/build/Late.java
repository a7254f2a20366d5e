package storyrod.build;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import storyrod.description.Description;
import storyrod.description.Description.ItemKind;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/**
 * Which units come when the finish is on.
 *
 * @param loose those that only lie or hang in the piece, by name
 * @param tops those that only top fasteners hold, by name
 */
public record Late(Set<String> loose, Set<String> tops) {
  static Late of(Piece piece, List<Unit> units) {
    Set<String> loose = new TreeSet<>();
    Set<String> tops = new TreeSet<>();
    for (Unit unit : units) {
      List<Joint> outer = outer(unit, piece.joints());
      if (outer.isEmpty()) {
        loose.add(unit.name());
      } else if (outer.stream().allMatch(joint -> isTopFastened(joint, piece.description()))) {
        tops.add(unit.name());
      }
    }
    return new Late(loose, tops);
  }

  /** 0 for what goes in last of all, 1 for a top, 2 for the rest. */
  int rank(Unit unit) {
    return isLoose(unit) ? 0 : isTop(unit) ? 1 : 2;
  }

  public boolean isLoose(Unit unit) {
    return unit.level().equals(Unit.PIECE) && loose.contains(unit.name());
  }

  public boolean isTop(Unit unit) {
    return unit.level().equals(Unit.PIECE) && tops.contains(unit.name());
  }

  private static boolean isTopFastened(Joint joint, Description description) {
    return !joint.glued()
        && joint.fasteners().stream()
            .map(fastener -> description.items().get(fastener.item()))
            .anyMatch(item -> item != null && item.kind() == ItemKind.TOP_FASTENER);
  }

  private static List<Joint> outer(Unit unit, List<Joint> joints) {
    return joints.stream()
        .filter(joint -> unit.has(joint.first()) != unit.has(joint.second()))
        .toList();
  }
}
