package storyrod.planset;

import java.util.List;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What no step sanded before the finish, by full names: so every part is told once. */
record SandedAtLast(Piece piece, List<Step> steps) {
  /** What comes on or in only after a step, so that all its faces can be reached. */
  List<String> loose(Step step) {
    List<String> sanded = sanded();
    return steps.stream()
        .filter(each -> each.number() > step.number())
        .flatMap(each -> each.newParts().stream())
        .filter(part -> !sanded.contains(part))
        .toList();
  }

  /** What is in its place by then. */
  List<String> builtIn(Step step) {
    List<String> others = loose(step);
    List<String> sanded = sanded();
    return piece.parts().stream()
        .map(Part::name)
        .filter(part -> !sanded.contains(part) && !others.contains(part))
        .toList();
  }

  private List<String> sanded() {
    return steps.stream()
        .filter(each -> each.verb() == Verb.SAND)
        .flatMap(each -> each.targets().stream())
        .toList();
  }
}
