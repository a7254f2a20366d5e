package storyrod.planset;

import java.util.List;
import java.util.Map;
import java.util.Set;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Nesting;
import storyrod.piece.Part;

/**
 * Sub-assemblies that are built as mirror images of each other. That is told in the first step that
 * puts them together: later their first parts can no longer be laid the other way round.
 */
record MirrorImages(PartPhrases phrases, FitData fit, List<Step> steps) {
  /** The sub-assemblies that a step begins as mirror images; most steps begin none. */
  List<Map<String, Object>> of(Step step) {
    List<String> built = fit.builtIn(step);
    List<Step> building =
        steps.stream()
            .filter(each -> each.verb() == Verb.FIT)
            .filter(each -> Set.copyOf(fit.builtIn(each)).equals(Set.copyOf(built)))
            .toList();
    boolean isFirst = building.isEmpty() || building.getFirst().number() == step.number();
    boolean isMirrored =
        areMirrorImages(step, built)
            || building.stream().anyMatch(each -> areMirrorImages(each, built));
    return isFirst && isMirrored ? phrases.assemblies(built) : List.of();
  }

  /** Whether parts come to one sub-assembly from the left that come to another from the right. */
  private boolean areMirrorImages(Step step, List<String> built) {
    Nesting nesting = Nesting.of(phrases.piece());
    return built.stream()
            .filter(each -> nesting.isAssembly(each) && !each.equals(Nesting.PIECE))
            .map(nesting::parts)
            .map(parts -> parts.stream().map(Part::name).filter(step.mirrored()::contains).count())
            .distinct()
            .count()
        > 1;
  }
}
