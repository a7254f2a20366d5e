package storyrod.planset;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slots;

/** When the ends of tongues lose a shaving: after the last cut of their part that is set out. */
record EasedEnds(Piece piece, PartPhrases phrases, List<Step> steps) {
  /** The parts whose tongues lose it in a step, and those of the step that wait for a later one. */
  Map<String, Object> of(Step step) {
    List<String> now =
        step.targets().stream()
            .filter(part -> isTongued(step, part) || isSetOut(step, part) && hasTongues(step, part))
            .filter(part -> !isSetOutAfter(step, part))
            .toList();
    List<String> later =
        step.targets().stream()
            .filter(part -> isTongued(step, part) && isSetOutAfter(step, part))
            .toList();
    return Map.of("eased", phrases.parts(now), "easedLater", phrases.parts(later));
  }

  private boolean hasTongues(Step step, String part) {
    return steps.stream()
        .filter(each -> each.number() < step.number())
        .anyMatch(each -> isTongued(each, part));
  }

  private boolean isSetOutAfter(Step step, String part) {
    return steps.stream()
        .filter(each -> each.number() > step.number())
        .anyMatch(each -> isSetOut(each, part));
  }

  private static boolean isTongued(Step step, String part) {
    return cuts(step, part).anyMatch(cut -> cut.term().equals("tongue"));
  }

  /** Whether the part gets what is measured from its ends. */
  private boolean isSetOut(Step step, String name) {
    Part part = piece.part(name);
    return cuts(step, name)
        .anyMatch(
            cut ->
                cut instanceof Cut.Holes
                    || cut instanceof Slots
                    || cut instanceof Cut.Trench trench && !runsThrough(part, trench));
  }

  private static boolean runsThrough(Part part, Cut.Trench trench) {
    return trench.removed().on(part.length()).equals(part.box().on(part.length()));
  }

  private static Stream<Cut> cuts(Step step, String part) {
    return step.operations().stream()
        .filter(each -> each.verb() == Verb.CUT || each.verb() == Verb.DRILL)
        .filter(each -> each.target().equals(part))
        .map(Operation::cuts)
        .flatMap(List::stream);
  }
}
