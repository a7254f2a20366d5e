package storyrod.drawing;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What stands when a step begins: the piece, and beside it what hangs in it only later. */
final class Standing {
  private final Piece piece;
  private final Nesting nesting;
  private final Set<String> there;
  private final Set<String> placed;
  private final Set<String> later;

  Standing(Piece piece, BuildPlan plan, Step step) {
    this.piece = piece;
    this.nesting = Nesting.of(piece);
    List<Step> earlier =
        plan.steps().stream()
            .filter(each -> each.number() < step.number() && each.verb() == Verb.FIT)
            .toList();
    this.there =
        earlier.stream()
            .flatMap(each -> each.newParts().stream())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    this.placed = targets(earlier.stream());
    this.later =
        targets(
            plan.steps().stream()
                .filter(each -> each.number() > step.number() && each.verb() == Verb.FIT));
  }

  private static Set<String> targets(Stream<Step> steps) {
    return steps
        .flatMap(each -> each.operations().stream())
        .map(Operation::target)
        .collect(Collectors.toSet());
  }

  /** The things that some parts belong to, each with all that is on it by then. */
  List<List<Part>> around(List<String> parts) {
    return things(parts, this::thing);
  }

  /** The same, what hangs in the piece out of it. */
  List<List<Part>> takenOut(List<String> parts) {
    return things(parts, part -> nesting.looseUnit(part).orElseGet(() -> body(part)));
  }

  /** The same, and by itself each part that is put on only later. */
  List<List<Part>> apart(List<String> parts) {
    return things(
        parts,
        part -> there.contains(part) ? nesting.looseUnit(part).orElseGet(() -> body(part)) : part);
  }

  private List<List<Part>> things(List<String> parts, UnaryOperator<String> thing) {
    Map<String, List<Part>> things = new LinkedHashMap<>();
    List<String> wanted = parts.stream().map(thing).distinct().toList();
    wanted.forEach(
        name ->
            things.put(
                name,
                Stream.concat(there.stream(), parts.stream())
                    .distinct()
                    .filter(part -> thing.apply(part).equals(name))
                    .map(piece::part)
                    .toList()));
    return List.copyOf(things.values());
  }

  /** A drawer or door by its name until it is hung; then it is of the piece. */
  private String thing(String part) {
    return nesting
        .looseUnit(part)
        .filter(unit -> !placed.contains(unit))
        .orElseGet(() -> body(part));
  }

  /**
   * A sub-assembly by its name as long as it lies beside the piece, as a top does; then the piece.
   */
  private String body(String part) {
    String outermost = nesting.around(part).getLast();
    return nesting.isAssembly(outermost) && later.contains(outermost) ? outermost : Nesting.PIECE;
  }
}
