package storyrod.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

/**
 * Finds units that have to go together first, where none can be put in by itself: two halves that
 * only come together as halves.
 *
 * <p>In one direction each unit is blocked by some others. A unit with all that blocks it, all that
 * blocks those, and so on, can leave the rest in that direction; the smallest such group that is
 * not everything is put together by itself.
 */
public final class Groups {
  private static final String AND = "+";

  private final Reach reach;
  private final List<Joint> joints;

  Groups(Reach reach, List<Joint> joints) {
    this.reach = reach;
    this.joints = joints;
  }

  /** The first of the units that go together under one name; the name itself for a single one. */
  public static String first(String name) {
    return name.split("\\+", 2)[0];
  }

  /** The group as a unit, of units that are stuck; empty if they cannot be parted at all. */
  Optional<Unit> among(List<Unit> stuck) {
    Links links = new Links(stuck, joints);
    return Leaving.HANDY.stream()
        .flatMap(way -> stuck.stream().flatMap(unit -> leaving(unit, stuck, way).stream()))
        .min(
            Comparator.comparing((List<Unit> group) -> !links.isConnected(group))
                .thenComparingInt(List::size))
        .map(Groups::joined);
  }

  /** What of a level stands in it when some of its units have become a group. */
  static List<Unit> grouped(List<Unit> level, Unit group) {
    return Stream.concat(
            level.stream().filter(unit -> !group.has(unit.parts().getFirst().name())),
            Stream.of(group))
        .toList();
  }

  /** The units of a group, as the units of a level of their own. */
  static List<Unit> inside(List<Unit> level, Unit group) {
    return level.stream()
        .filter(unit -> group.has(unit.parts().getFirst().name()))
        .map(unit -> new Unit(unit.name(), group.name(), unit.parts()))
        .toList();
  }

  private Optional<List<Unit>> leaving(Unit first, List<Unit> stuck, Face way) {
    Set<Unit> group = new LinkedHashSet<>(List.of(first));
    List<Unit> open = new ArrayList<>(List.of(first));
    while (!open.isEmpty()) {
      Unit mover = open.removeLast();
      stuck.stream()
          .filter(other -> !group.contains(other) && !reach.isFree(mover, other, way))
          .toList()
          .forEach(
              blocking -> {
                group.add(blocking);
                open.add(blocking);
              });
    }
    List<Unit> units = stuck.stream().filter(group::contains).toList();
    List<Unit> rest = stuck.stream().filter(unit -> !group.contains(unit)).toList();
    boolean parts = units.size() > 1 && !rest.isEmpty();
    return parts && reach.ways(joined(units), rest).contains(way)
        ? Optional.of(units)
        : Optional.empty();
  }

  private static Unit joined(List<Unit> units) {
    return new Unit(
        units.stream().map(Unit::name).collect(Collectors.joining(AND)),
        units.getFirst().level(),
        units.stream().map(Unit::parts).flatMap(List::stream).toList());
  }
}
