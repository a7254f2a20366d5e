package storyrod.build;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

/**
 * Whether a unit is fitted in one step with those before it: equal ones that come the same way, or
 * as mirror images, to the same or to equal parts.
 */
final class Alike {
  private static final int MOST = 4;

  private final Late late;
  private final GlueUps glueUps;
  private final Map<String, Map<String, Unit>> units;

  /**
   * Likeness in an order.
   *
   * @param units by level, the unit of each part
   */
  Alike(Late late, GlueUps glueUps, Map<String, Map<String, Unit>> units) {
    this.late = late;
    this.glueUps = glueUps;
    this.units = units;
  }

  boolean goesWith(Placing placing, List<Placing> group) {
    Placing last = group.getLast();
    if (last.enters().isEmpty()) {
      return true;
    }
    return group.size() < MOST
        && (last.unit().marks().equals(placing.unit().marks()) || areLate(last, placing))
        && last.tilted() == placing.tilted()
        && last.firstMove().equals(placing.firstMove())
        && (isRepeat(last, placing) || isTwin(group, placing));
  }

  /** Whether all that come in are equal, and closed while the glue is open. */
  boolean areTwins(List<Placing> group) {
    List<Placing> coming = coming(group);
    return coming.stream().map(each -> each.unit().marks()).distinct().count() == 1
        && glueUps.isDoneInTime(coming);
  }

  private static List<Placing> coming(List<Placing> group) {
    return group.stream().filter(each -> each.enters().isPresent()).toList();
  }

  /** Whether it comes the same way to the same parts. */
  private boolean isRepeat(Placing last, Placing placing) {
    return last.enters().equals(placing.enters())
        && (into(last).keySet().equals(into(placing).keySet()) || areFronts(last, placing));
  }

  /**
   * Whether it comes to equal parts, from the same or the opposite side, and is fixed in the same
   * way, and all of them are fitted before the glue gets stiff.
   */
  private boolean isTwin(List<Placing> group, Placing placing) {
    List<Placing> coming = coming(group);
    Placing first = coming.getFirst();
    return !late.isLate(placing.unit())
        && placing.isStraight()
        && (first.enters().equals(placing.enters()) || isMirrored(first, placing))
        && marks(into(first)).equals(marks(into(placing)))
        && holds(first).equals(holds(placing))
        && coming.stream().noneMatch(each -> into(placing).containsKey(each.unit().name()))
        && glueUps.isDoneInTime(Stream.concat(coming.stream(), Stream.of(placing)).toList());
  }

  /** Whether they come from opposite sides, and the piece lies for both as it does for one. */
  static boolean isMirrored(Placing one, Placing other) {
    boolean isOfPiece = one.unit().level().equals(Unit.PIECE);
    return one.enters()
        .map(Face::opposite)
        .filter(way -> other.enters().filter(way::equals).isPresent())
        .filter(way -> !isOfPiece || way.axis() == Axis.X)
        .isPresent();
  }

  /** What joins it to what stands. */
  private static List<String> holds(Placing placing) {
    return placing.closes().stream()
        .map(joint -> joint.glued() + " " + joint.holding() + " " + joint.fasteners())
        .sorted()
        .toList();
  }

  private static List<String> marks(Map<String, Unit> units) {
    return units.values().stream().map(unit -> unit.marks().toString()).sorted().toList();
  }

  /** The units that a unit is joined to, by their names. */
  private Map<String, Unit> into(Placing placing) {
    Map<String, Unit> ofLevel = units.get(placing.unit().level());
    Map<String, Unit> into = new TreeMap<>();
    placing.closes().stream()
        .map(joint -> ofLevel.get(other(joint, placing)))
        .forEach(unit -> into.put(unit.name(), unit));
    return into;
  }

  /** Whether both are drawers, or their fronts, from one text, of whatever height. */
  private boolean areLate(Placing one, Placing other) {
    return (late.isLoose(one.unit()) && late.isLoose(other.unit()) || areFronts(one, other))
        && shape(one.unit()).equals(shape(other.unit()));
  }

  /** The names of its parts inside it, with what they are made of. */
  private static List<String> shape(Unit unit) {
    return unit.parts().stream()
        .map(
            part ->
                part.name()
                        .substring(Math.min(unit.name().length(), part.name().lastIndexOf('.') + 1))
                    + " "
                    + part.stock().name())
        .toList();
  }

  /** Whether both are equal fronts of equal drawers, which are fixed alike. */
  private boolean areFronts(Placing one, Placing other) {
    return late.isFront(one.unit()) && late.isFront(other.unit());
  }

  private static String other(Joint joint, Placing placing) {
    return placing.unit().has(joint.first()) ? joint.second() : joint.first();
  }
}
