package storyrod.build;

import java.util.List;
import java.util.function.Predicate;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/** The part of a step that one of its sub-assemblies takes. */
public record OneUnit(Piece piece) {
  /** A step that puts only one of its sub-assemblies together; its times stay those of all. */
  public Step of(Step step, String level) {
    Nesting nesting = Nesting.of(piece);
    List<Operation> operations =
        step.operations().stream()
            .filter(each -> nesting.level(each.target()).equals(level))
            .toList();
    Predicate<String> isIn = part -> nesting.isIn(part, level);
    return new Step(
        step.number(),
        step.stage(),
        operations,
        step.newParts().stream().filter(isIn).toList(),
        step.standing().stream().filter(isIn).toList(),
        step.enters(),
        step.mirrored().stream().filter(isIn).toList(),
        step.firstMove(),
        step.down(),
        Operations.sum(operations.stream().flatMap(each -> each.hardware().stream()).toList()),
        step.tools(),
        step.cautions(),
        step.settings(),
        step.say(),
        step.minutes(),
        step.waitMinutes(),
        step.glueUp());
  }
}
