package storyrod.planset;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/**
 * The steps and parts that a plan set shows.
 *
 * @param steps by their numbers
 * @param marks of the parts that stand in lists and have drawings
 * @param whole whether these are all
 */
record Chosen(Set<Integer> steps, Set<String> marks, boolean whole) {
  Chosen {
    steps = Set.copyOf(steps);
    marks = Set.copyOf(marks);
  }

  static Chosen all(Piece piece, BuildPlan build) {
    return new Chosen(
        build.steps().stream().map(Step::number).collect(Collectors.toSet()),
        piece.marks().stream().map(Mark::mark).collect(Collectors.toSet()),
        true);
  }

  static Chosen of(Piece piece, List<Step> steps, boolean whole) {
    return new Chosen(
        steps.stream().map(Step::number).collect(Collectors.toSet()),
        steps.stream()
            .flatMap(step -> Choice.marks(piece, step).stream())
            .collect(Collectors.toSet()),
        whole);
  }

  boolean has(Step step) {
    return steps.contains(step.number());
  }

  boolean has(Mark mark) {
    return marks.contains(mark.mark());
  }
}
