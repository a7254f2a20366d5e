package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

/**
 * What still stands of a level while one unit after the other is taken away, how it is joined, and
 * in which directions each unit is free. How many block a unit is counted once, and then kept up to
 * date: counting anew for every unit in every round would grow with the cube of their number.
 */
final class Remaining {
  private final Reach reach;
  private final Links links;
  private final Links.Some all;
  private final List<Unit> standing;
  private final Map<String, int[]> blockers = new LinkedHashMap<>();

  Remaining(List<Unit> units, List<Joint> joints, Reach reach) {
    this.reach = reach;
    this.links = new Links(units, joints);
    this.all = links.some(units);
    this.standing = new ArrayList<>(units);
    units.forEach(unit -> blockers.put(unit.name(), counted(unit, units)));
  }

  private int[] counted(Unit unit, List<Unit> units) {
    int[] counts = new int[Face.values().length];
    units.stream()
        .filter(other -> other != unit)
        .forEach(other -> add(counts, reach.blockedBy(unit, other), 1));
    return counts;
  }

  private static void add(int[] counts, int faces, int change) {
    for (int i = 0; i < counts.length; i++) {
      counts[i] += (faces >> i & 1) * change;
    }
  }

  List<Unit> standing() {
    return standing;
  }

  List<Unit> without(Unit unit) {
    return Assembler.without(standing, unit);
  }

  /** Takes a unit away. */
  void remove(Unit unit) {
    standing.remove(unit);
    blockers.remove(unit.name());
    all.remove(unit);
    standing.forEach(other -> add(blockers.get(other.name()), reach.blockedBy(other, unit), -1));
  }

  /** Those of an order that have to wait until the last of it that stands has left. */
  Set<String> waiting(List<String> order) {
    List<String> there = order.stream().distinct().filter(blockers::containsKey).toList();
    return new LinkedHashSet<>(there.subList(0, Math.max(0, there.size() - 1)));
  }

  /** The directions in which a unit can move away from all others, in the order of the faces. */
  List<Face> ways(Unit unit) {
    int[] counts = blockers.get(unit.name());
    int closed = 0;
    for (int i = 0; i < counts.length; i++) {
      closed |= counts[i] > 0 ? 1 << i : 0;
    }
    return reach.ways(unit, standing, closed);
  }

  /** The joints between a unit and what else stands. */
  List<Joint> closed(Unit unit) {
    return all.closed(unit);
  }

  /** What stands of some units. */
  Links.Some some(Predicate<Unit> which) {
    return links.some(standing.stream().filter(which).toList());
  }
}
