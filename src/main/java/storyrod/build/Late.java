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
 * @param fronts those of hung drawers, by name
 */
public record Late(Set<String> loose, Set<String> tops, Set<String> fronts) {
  static Late of(Piece piece, List<Unit> units) {
    Set<String> loose = new TreeSet<>();
    Set<String> tops = new TreeSet<>();
    Set<String> fronts = Fronts.of(piece);
    List<Joint> joints =
        piece.joints().stream()
            .filter(each -> !fronts.contains(each.first()) && !fronts.contains(each.second()))
            .toList();
    for (Unit unit : units) {
      List<Joint> outer = outer(unit, joints);
      if (fronts.contains(unit.name())) {
        continue;
      }
      if (outer.isEmpty()) {
        loose.add(unit.name());
      } else if (outer.stream().allMatch(joint -> isTopFastened(joint, piece.description()))) {
        tops.add(unit.name());
      }
    }
    return new Late(loose, tops, fronts);
  }

  /**
   * What leaves first when the piece is taken apart: what lies loose, then fronts, each just before
   * its drawer, then a top, then the rest.
   */
  int rank(Unit unit, List<Unit> standing) {
    if (isLoose(unit)) {
      return standing.stream().anyMatch(other -> isFrontOf(other, unit)) ? 2 : 0;
    }
    return isFront(unit) ? 1 : isTop(unit) ? 3 : 4;
  }

  private boolean isFrontOf(Unit front, Unit drawer) {
    return isFront(front)
        && front.parts().getFirst().assembly().filter(drawer.name()::equals).isPresent();
  }

  public boolean isFront(Unit unit) {
    return unit.level().equals(Unit.PIECE) && fronts.contains(unit.name());
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
