package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Levels;
import storyrod.build.Operation;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** In which order and from where parts and sub-assemblies came to their places. */
final class Moves {
  private static final Face UP = Face.TOP;
  private static final int NEVER = Integer.MAX_VALUE;

  private final BuildPlan plan;
  private final Contacts contacts;
  private final Map<String, List<storyrod.build.Unit>> levels;

  /** Parts that move as one. */
  record Unit(String name, List<String> parts) {}

  /** Units that were fitted in one tier of a step from one side, and that side. */
  record Group(Face out, List<Unit> units) {
    List<String> parts() {
      return units.stream().flatMap(unit -> unit.parts().stream()).toList();
    }
  }

  /** How a unit came in; what lies ready in a step comes before what moves, tier by tier. */
  private record Entry(int step, int tier, Face out) implements Comparable<Entry> {
    @Override
    public int compareTo(Entry other) {
      return Comparator.comparingInt(Entry::step)
          .thenComparingInt(Entry::tier)
          .thenComparing(Entry::out)
          .compare(this, other);
    }
  }

  Moves(Piece piece, BuildPlan plan) {
    this.plan = plan;
    this.contacts = new Contacts(piece);
    this.levels = Levels.withFronts(piece);
  }

  /**
   * For each sub-assembly, inner ones first, and last for the piece, its units in groups, in the
   * order in which they were fitted.
   */
  List<List<Group>> levels() {
    return levels.values().stream().map(this::grouped).toList();
  }

  /** The same for one sub-assembly or the piece, by its name. */
  List<Group> level(String name) {
    return grouped(levels.get(name));
  }

  private List<Group> grouped(List<storyrod.build.Unit> level) {
    List<Unit> units = level.stream().map(each -> new Unit(each.name(), each.partNames())).toList();
    return grouped(units, units.stream().flatMap(unit -> unit.parts().stream()).toList());
  }

  /** Sorts units by their steps; those of a step that do not move come before those that do. */
  private List<Group> grouped(List<Unit> units, List<String> scope) {
    Map<Entry, List<Unit>> groups = new TreeMap<>();
    for (Unit unit : units) {
      Entry entry = entry(unit, scope);
      groups.computeIfAbsent(entry, key -> new ArrayList<>()).add(unit);
    }
    List<Group> ordered = new ArrayList<>();
    groups.forEach((entry, each) -> ordered.add(new Group(entry.out(), each)));
    if (beginsWithAnEnd(List.copyOf(groups.keySet())) && ordered.getFirst().units().size() == 1) {
      Group end = ordered.removeFirst();
      ordered.add(1, new Group(ordered.getFirst().out().opposite(), end.units()));
    }
    return ordered;
  }

  /** Whether all of a first step comes to one end: then what lies between both ends stays. */
  private static boolean beginsWithAnEnd(List<Entry> entries) {
    return entries.size() > 2
        && entries.getFirst().tier() == 0
        && entries.get(1).step() == entries.getFirst().step()
        && entries.get(2).step() == entries.getFirst().step()
        && entries.get(2).tier() > entries.get(1).tier();
  }

  /** The first step that brings the unit together with something else of the scope. */
  private Entry entry(Unit unit, List<String> scope) {
    for (Step step : plan.steps()) {
      boolean brings = step.newParts().stream().anyMatch(unit.parts()::contains);
      if (brings
          && staysIn(scope, step)
          && meetsOthers(unit, scope, step)
          && !isOnlyBuilt(unit, step)) {
        return new Entry(step.number(), tier(unit, step), out(unit, step));
      }
    }
    return setUp(unit).orElseGet(() -> new Entry(NEVER, 1, outByJoints(unit)));
  }

  /** What is only set up, for others to come to it, stands from that step on. */
  private Optional<Entry> setUp(Unit unit) {
    return plan.steps().stream()
        .filter(step -> step.standing().isEmpty() && step.newParts().containsAll(unit.parts()))
        .reduce((earlier, later) -> later)
        .map(step -> new Entry(step.number(), 0, outByJoints(unit)));
  }

  /**
   * Whether what a step does to parts of the scope stays among them; others may be built alike in
   * the same step.
   */
  private static boolean staysIn(List<String> scope, Step step) {
    List<Joint> closed =
        step.operations().stream().flatMap(each -> each.joints().stream()).toList();
    boolean isJoined = closed.stream().anyMatch(joint -> scope.contains(joint.first()));
    return closed.stream()
            .allMatch(joint -> scope.contains(joint.first()) == scope.contains(joint.second()))
        && (isJoined || scope.containsAll(step.newParts()) && scope.containsAll(step.standing()));
  }

  private static boolean meetsOthers(Unit unit, List<String> scope, Step step) {
    return Stream.concat(step.standing().stream(), step.newParts().stream())
            .anyMatch(part -> scope.contains(part) && !unit.parts().contains(part))
        || unit.parts().size() == 1;
  }

  /** Whether all that a step does to a unit is to build it, be it beside others of its kind. */
  private static boolean isOnlyBuilt(Unit unit, Step step) {
    List<Joint> own =
        step.operations().stream()
            .flatMap(each -> each.joints().stream())
            .filter(
                joint ->
                    unit.parts().contains(joint.first()) || unit.parts().contains(joint.second()))
            .toList();
    return !own.isEmpty()
        && own.stream()
            .allMatch(
                joint ->
                    unit.parts().contains(joint.first()) && unit.parts().contains(joint.second()));
  }

  /** The tier of a step in which a unit comes, from 1 on; 0 if it lies ready for others. */
  private static int tier(Unit unit, Step step) {
    List<List<Operation>> tiers = step.tiers();
    for (int i = 0; i < tiers.size(); i++) {
      if (tiers.get(i).stream()
          .anyMatch(each -> each.parts().stream().anyMatch(unit.parts()::contains))) {
        return i + 1;
      }
    }
    return 0;
  }

  private Face out(Unit unit, Step step) {
    return step.enters(unit.parts()).map(Face::opposite).orElseGet(() -> outByJoints(unit));
  }

  /** Against the way in which its first joint was closed, else up. */
  private Face outByJoints(Unit unit) {
    Optional<Face> goesIn =
        contacts
            .outward(unit.parts())
            .filter(joint -> unit.parts().contains(joint.first()))
            .map(joint -> joint.entry().opposite())
            .findFirst();
    Optional<Face> takes = contacts.outward(unit.parts()).map(Joint::entry).findFirst();
    return goesIn.or(() -> takes).orElse(UP);
  }
}
