package storyrod.build.rule;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Late;
import storyrod.build.Operation;
import storyrod.build.Placing;
import storyrod.build.Reach;
import storyrod.build.Traits;
import storyrod.build.Unit;
import storyrod.build.Verb;
import storyrod.description.ItemKind;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What rules look at.
 *
 * @param placings how units go together, level by level, each level in its order
 * @param late which units wait for the finish
 */
public record Job(
    Piece piece, List<Operation> operations, List<Placing> placings, Reach reach, Late late) {
  public Job {
    operations = List.copyOf(operations);
    placings = List.copyOf(placings);
  }

  /** The operations of a verb, one for each name. */
  public Stream<Operation> all(Verb verb) {
    return operations.stream().filter(each -> each.verb() == verb);
  }

  /** Needs between the operations of two verbs on the same part. */
  List<Need> onEachPart(Rule rule, Verb before, Verb after) {
    return onParts(rule, before, after, part -> true);
  }

  /** Needs between the operations of two verbs on the same part, for some parts. */
  List<Need> onParts(Rule rule, Verb before, Verb after, Predicate<Part> which) {
    Set<String> first = targets(before);
    Set<String> second = targets(after);
    return piece.wood().stream()
        .filter(part -> first.contains(part.name()) && second.contains(part.name()))
        .filter(which)
        .map(part -> rule.need(name(before, part.name()), name(after, part.name())))
        .toList();
  }

  private Set<String> targets(Verb verb) {
    return all(verb).map(Operation::target).collect(Collectors.toUnmodifiableSet());
  }

  boolean has(Verb verb, String target) {
    return all(verb).anyMatch(each -> each.target().equals(target));
  }

  static String name(Verb verb, String target) {
    return verb.word() + " " + target;
  }

  boolean isPanel(Part part) {
    return Traits.isPanel(piece, part);
  }

  /** The placings of the same level that come after one. */
  List<Placing> after(Placing placing) {
    return placings.subList(placings.indexOf(placing) + 1, placings.size()).stream()
        .filter(each -> each.unit().level().equals(placing.unit().level()))
        .toList();
  }

  /** The units of the same level that stand when one has been placed, without itself. */
  public List<Unit> before(Placing placing) {
    return placings.subList(0, placings.indexOf(placing)).stream()
        .map(Placing::unit)
        .filter(unit -> unit.level().equals(placing.unit().level()))
        .toList();
  }

  /** All other units of the same level. */
  List<Unit> others(Placing placing) {
    return Stream.concat(before(placing).stream(), after(placing).stream().map(Placing::unit))
        .toList();
  }

  /** Whether a unit can come in past all others of its level. */
  boolean canComeLast(Placing placing) {
    return !reach.ways(placing.unit(), others(placing)).isEmpty();
  }

  /** Whether a unit goes into a sub-assembly that is one unit of a dry fit. */
  boolean isBuiltIntoDry(Unit unit, Operation dry) {
    return !unit.level().equals(Unit.PIECE)
        && !unit.level().equals(dry.target())
        && placings.stream()
            .map(Placing::unit)
            .filter(each -> each.level().equals(unit.level()) && !isLate(each))
            .allMatch(each -> dry.parts().containsAll(each.partNames()))
        && !isLate(unit);
  }

  /** What an operation mounts. */
  ItemKind kind(Operation mount) {
    return piece.kind(mount.target());
  }

  /** Whether a part is, or belongs to, the front of a drawer. */
  boolean isOfFront(String part) {
    return placings.stream()
        .map(Placing::unit)
        .anyMatch(unit -> late.isFront(unit) && unit.partNames().contains(part));
  }

  /** Whether a unit waits for the finish. */
  public boolean isLate(Unit unit) {
    return late.isLate(unit);
  }

  static String fit(Placing placing) {
    return name(Verb.FIT, placing.unit().name());
  }

  /** What is fitted to the piece itself before its finish, in order. */
  List<Placing> built() {
    return built(Unit.PIECE);
  }

  /** The same for a sub-assembly. */
  List<Placing> built(String level) {
    return placings().stream()
        .filter(placing -> placing.unit().level().equals(level))
        .filter(placing -> !isLate(placing.unit()))
        .toList();
  }
}
