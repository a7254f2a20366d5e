package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Fineness;
import storyrod.geometry.Solid;
import storyrod.piece.Carving;
import storyrod.piece.Cut;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;

/**
 * What is made of a piece by some step. Holes drilled in place belong to the step that closes their
 * joint or fixes the front that guides the drill.
 */
record ByThen(BuildPlan plan) {
  /** The piece as it stands when a step is done: what is cut or bored later is not there yet. */
  Piece piece(Piece whole, Step step) {
    return whole.with(whole.parts().stream().map(part -> part(part, step)).toList());
  }

  private Part part(Part part, Step step) {
    Set<Cut> later = made(part, number -> number > step.number());
    return later.isEmpty() ? part : part.standing(without(later, part).posed(part.pose()));
  }

  /** The cuts that some steps make in a part, those of them that are drilled in place too. */
  Set<Cut> made(Part part, IntPredicate steps) {
    return plan.steps().stream()
        .filter(step -> steps.test(step.number()))
        .flatMap(step -> step.operations().stream())
        .filter(each -> each.verb() == Verb.FIT || each.target().equals(part.name()))
        .flatMap(operation -> operation.cuts().stream())
        .filter(part.cuts()::contains)
        .collect(Collectors.toSet());
  }

  /** Carved anew only where more than bores is to come. */
  private static Solid without(Set<Cut> later, Part part) {
    List<Cut> made = part.cuts().stream().filter(cut -> !later.contains(cut)).toList();
    if (!later.stream().allMatch(ByThen::isBored)) {
      return Carving.of(part.box(), made, Fineness.USUAL);
    }
    List<Cylinder> left = new ArrayList<>(part.solid().bores());
    left.removeAll(Carving.of(part.box(), List.copyOf(later), Fineness.USUAL).bores());
    return part.solid().unbored().bored(left);
  }

  private static boolean isBored(Cut cut) {
    return cut instanceof Cut.Holes || cut instanceof InPlace || cut instanceof PocketHoles;
  }
}
