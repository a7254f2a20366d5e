package storyrod.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

/**
 * Finds the order in which units go together, by taking them apart and running that backwards.
 *
 * <p>A unit that can leave can still leave when others have left before it. So taking away
 * whichever unit is free never spoils anything, and if at some point none is free, no order exists;
 * what is best to take away is then only a matter of good work ({@link Leaving}).
 */
final class Assembler {
  private final Reach reach;
  private final List<Joint> joints;
  private final Late late;

  Assembler(Reach reach, List<Joint> joints, Late late) {
    this.reach = reach;
    this.joints = joints;
    this.late = late;
  }

  /**
   * An order of one level.
   *
   * @param placings from the first unit to the last
   * @param stuck the units that keep each other in; empty if the order is complete
   */
  record Order(List<Placing> placings, List<Unit> stuck) {
    boolean isComplete() {
      return stuck.isEmpty();
    }

    Order with(List<Placing> order) {
      return new Order(order, stuck);
    }

    /** The names of the fitting operations of all its units. */
    List<String> names() {
      return Stream.concat(placings.stream().map(Placing::unit), stuck.stream())
          .map(Unit::fitName)
          .toList();
    }
  }

  /**
   * Orders the units of one level.
   *
   * @param own names of units in the orders that the maker wants, if any; others go between
   */
  Order order(List<Unit> units, List<List<String>> own) {
    Remaining left = new Remaining(units, joints, reach);
    List<Placing> placings = new ArrayList<>();
    while (left.standing().size() > 1) {
      Optional<Leaving> next = next(left, own, placings);
      if (next.isEmpty()) {
        return new Order(placings, left.standing());
      }
      left.remove(next.get().unit());
      placings.addFirst(placing(next.get(), left.standing()));
    }
    left.standing()
        .forEach(
            first ->
                placings.addFirst(
                    new Placing(
                        first, Optional.empty(), Optional.empty(), List.of(), List.of(), false)));
    return new Order(placings, List.of());
  }

  /** What still stands, and those of it that have to hang together. */
  private record Round(Remaining left, Links.Some joined) {}

  /** What leaves next: in two moves only where nothing leaves in one. */
  private Optional<Leaving> next(Remaining left, List<List<String>> own, List<Placing> later) {
    List<Unit> standing = left.standing();
    List<Set<String>> waiting = own.stream().map(left::waiting).toList();
    List<Unit> free =
        standing.stream()
            .filter(unit -> waiting.stream().noneMatch(each -> each.contains(unit.name())))
            .toList();
    Round round = new Round(left, left.some(unit -> !late.isLoose(unit) && !late.isFront(unit)));
    List<Leaving> all = free.stream().flatMap(unit -> leaving(unit, round).stream()).toList();
    return all.isEmpty()
        ? best(free.stream().flatMap(unit -> leavingInTwo(unit, round)).toList(), standing, later)
        : best(all, standing, later);
  }

  private Optional<Leaving> best(List<Leaving> all, List<Unit> standing, List<Placing> later) {
    Optional<Placing> next = later.stream().findFirst();
    // A unit of more than this is more than all that would be left: the rest is better put to it.
    double half = standing.stream().mapToDouble(Unit::volumeMm3).sum() / 2;
    return all.stream()
        .min(
            Comparator.comparingInt((Leaving each) -> late.rank(each.unit()))
                .thenComparingInt(Leaving::cost)
                .thenComparing(each -> !isTurnedFor(each, all))
                .thenComparing(each -> !next.map(each::isTwinOf).orElse(false))
                .thenComparing(each -> each.unit().volumeMm3() > half)
                .thenComparing(each -> each.unit().parts().size() == 1)
                .thenComparing(each -> !each.isPanel())
                .thenComparing(Leaving::isGlued)
                .thenComparingDouble(each -> each.unit().volumeMm3())
                .thenComparing(each -> -standing.indexOf(each.unit())));
  }

  /** Whether the piece is turned for a unit and its equals, all of which can leave as well. */
  private static boolean isTurnedFor(Leaving leaving, List<Leaving> all) {
    return leaving.isFromBelow()
        && all.stream()
            .filter(other -> other.unit().marks().equals(leaving.unit().marks()))
            .allMatch(other -> other.cost() == leaving.cost());
  }

  private Optional<Leaving> leaving(Unit unit, Round round) {
    List<Joint> closed = round.left().closed(unit);
    List<Face> ways = round.left().ways(unit);
    if (ways.isEmpty()) {
      return closed.isEmpty()
          ? Tilt.way(reach, unit, round.left().without(unit))
              .map(way -> Leaving.tilted(unit, way, closed))
          : Optional.empty();
    }
    int cost = cost(unit, closed, round);
    return ways.stream()
        .map(way -> Leaving.straight(unit, way, closed, cost))
        .min(
            Comparator.comparingInt(Leaving::cost)
                .thenComparingInt(Leaving::againstJoints)
                .thenComparingInt(Leaving::handy));
  }

  private Stream<Leaving> leavingInTwo(Unit unit, Round round) {
    List<Joint> closed = round.left().closed(unit);
    int cost = cost(unit, closed, round);
    return reach.waysInTwo(unit, round.left().without(unit)).stream()
        .map(moves -> Leaving.straight(unit, moves.over(), closed, cost).inTwo(moves))
        .min(
            Comparator.comparingInt(Leaving::cost)
                .thenComparingInt(Leaving::againstJoints)
                .thenComparingInt(Leaving::handy)
                .thenComparing(each -> each.firstMove().orElseThrow().beside()))
        .stream();
  }

  /** What speaks against screws out of reach, and pieces that hang together by nothing. */
  private int cost(Unit unit, List<Joint> closed, Round round) {
    boolean isDriven = closed.stream().anyMatch(joint -> joint.driven().isPresent());
    int driving = isDriven ? Leaving.drivingCost(reach, closed, round.left().without(unit)) : 0;
    return driving + (round.joined().isSplitWithout(unit) ? Leaving.SPLIT : 0);
  }

  private Placing placing(Leaving leaving, List<Unit> standing) {
    return new Placing(
        leaving.unit(),
        Optional.of(leaving.way().opposite()),
        leaving.firstMove(),
        leaving.closed(),
        standing.stream().flatMap(unit -> unit.partNames().stream()).toList(),
        leaving.tilted());
  }

  Reach reach() {
    return reach;
  }

  /** The units in a direction's way, for the direction that has the fewest. */
  List<Unit> trappedBy(Unit unit, List<Unit> others) {
    return java.util.Arrays.stream(Face.values())
        .map(way -> others.stream().filter(other -> !reach.isFree(unit, other, way)).toList())
        .min(Comparator.comparingInt(List::size))
        .orElseThrow();
  }

  static List<Unit> without(List<Unit> units, Unit unit) {
    return units.stream().filter(each -> !each.name().equals(unit.name())).toList();
  }
}
