package storyrod.build;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import storyrod.description.Description;
import storyrod.piece.Joint;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/**
 * Which units come when the finish is on.
 *
 * @param loose those that only lie or hang in the piece, by name
 * @param sliding those of the loose ones that run in a groove to their place, by name
 * @param tops those that only top fasteners hold, by name
 * @param drawers the drawer of each front, by the front's name
 * @param backs those that are fastened on from outside; they come last of what stands, by name
 * @param removable those of the backs that wait for the finish and for the hardware inside, for
 *     screws alone hold them and the piece stands firm without them
 */
public record Late(
    Set<String> loose,
    Set<String> sliding,
    Set<String> tops,
    Map<String, String> drawers,
    Set<String> backs,
    Set<String> removable) {
  static Late of(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    return new Late(
        nesting.loose(),
        sliding(piece, nesting),
        tops(piece, nesting),
        Fronts.byDrawer(piece, nesting),
        Backs.of(piece),
        Backs.removable(piece));
  }

  private static Set<String> sliding(Piece piece, Nesting nesting) {
    Set<String> sliding = new TreeSet<>();
    piece.joints().stream()
        .filter(Joint::slides)
        .forEach(
            joint ->
                nesting.loose().stream()
                    .filter(unit -> nesting.isIn(joint.first(), unit))
                    .filter(unit -> !nesting.isIn(joint.second(), unit))
                    .forEach(sliding::add));
    return sliding;
  }

  /** The units that only top fasteners hold, each on what stands below it. */
  static Set<String> tops(Piece piece, Nesting nesting) {
    Set<String> held = new TreeSet<>();
    Set<String> fastened = new TreeSet<>();
    for (Joint joint : piece.joints()) {
      boolean isOnTop = isTopFastened(joint, piece.description());
      (isOnTop ? fastened : held).addAll(without(joint.first(), joint.second(), nesting));
      held.addAll(without(joint.second(), joint.first(), nesting));
    }
    fastened.removeAll(held);
    return fastened;
  }

  /** The units around a part that another part is not in. */
  private static List<String> without(String part, String other, Nesting nesting) {
    return nesting.around(part).stream().filter(unit -> !nesting.isIn(other, unit)).toList();
  }

  private static boolean isTopFastened(Joint joint, Description description) {
    return !joint.glued()
        && joint.fasteners().stream()
            .map(fastener -> description.items().get(fastener.item()))
            .anyMatch(item -> item != null && item.kind().isTopFastener());
  }

  /**
   * What leaves first when the piece is taken apart: a lid that slides, then what else lies loose,
   * then the fronts of all drawers, then the drawers, then a back that was screwed on last, then a
   * top, then a back that stands with the case, then the rest.
   */
  int rank(Unit unit) {
    if (isSliding(unit)) {
      return 0;
    }
    if (isLoose(unit)) {
      return drawers.containsValue(unit.name()) ? 3 : 1;
    }
    if (isFront(unit)) {
      return 2;
    }
    return isRemovable(unit) ? 4 : isTop(unit) ? 5 : isBack(unit) ? 6 : 7;
  }

  /** Whether a unit waits for the finish. */
  public boolean isLate(Unit unit) {
    return isLoose(unit) || isTop(unit) || isFront(unit) || isRemovable(unit);
  }

  /** Whether a unit is a back that is screwed on when the inside is done. */
  public boolean isRemovable(Unit unit) {
    return removable.contains(unit.name());
  }

  public boolean isFront(Unit unit) {
    return drawers.containsKey(unit.name());
  }

  public boolean isLoose(Unit unit) {
    return loose.contains(unit.name());
  }

  /** Whether a unit runs in grooves, as a sliding lid does. */
  public boolean isSliding(Unit unit) {
    return sliding.contains(unit.name());
  }

  /** Whether a unit is a back that is fastened on from outside. */
  public boolean isBack(Unit unit) {
    return backs.contains(unit.name());
  }

  public boolean isTop(Unit unit) {
    return tops.contains(unit.name());
  }
}
