package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/**
 * What a picture shows of a step that puts several alike sub-assemblies together. Two stand side by
 * side; of three or more only the first is shown, for all together leave none large enough.
 */
public final class OneOfMany {
  private static final int MANY = 3;

  private OneOfMany() {}

  /** Whether the picture of a step shows the first of its sub-assemblies only. */
  public static boolean isIn(Piece piece, Step step) {
    return levels(Nesting.of(piece), step).size() >= MANY;
  }

  /** The operations that are shown, in their order. */
  static List<Operation> shown(Nesting nesting, Step step, List<Operation> operations) {
    List<String> levels = levels(nesting, step);
    return levels.size() < MANY
        ? operations
        : operations.stream()
            .filter(each -> nesting.level(each.target()).equals(levels.getFirst()))
            .toList();
  }

  /** The parts that are shown, in their order. */
  static List<String> shownParts(Nesting nesting, Step step, List<String> parts) {
    List<String> levels = levels(nesting, step);
    return levels.size() < MANY
        ? parts
        : parts.stream().filter(part -> nesting.isIn(part, levels.getFirst())).toList();
  }

  /** The sub-assemblies that a step builds, if they stand alone; else none. */
  static List<String> levels(Nesting nesting, Step step) {
    List<String> levels =
        step.verb() == Verb.FIT
            ? step.operations().stream()
                .map(each -> nesting.level(each.target()))
                .distinct()
                .toList()
            : List.of();
    boolean alone =
        Stream.concat(step.newParts().stream(), step.standing().stream())
            .allMatch(part -> levels.stream().anyMatch(level -> isWithin(nesting, part, level)));
    return alone ? levels : List.of();
  }

  private static boolean isWithin(Nesting nesting, String part, String level) {
    return !level.equals(Nesting.PIECE) && nesting.isIn(part, level);
  }
}
