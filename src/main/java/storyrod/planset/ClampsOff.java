package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import storyrod.build.BuildPlan.Step;

/**
 * Which clamps come off before a step: those of all glue-ups whose parts it is the first to need.
 */
final class ClampsOff {
  private final Map<Integer, List<Integer>> off = new TreeMap<>();

  ClampsOff(List<Step> steps, Predicate<Step> isClamped) {
    for (Step step : steps) {
      if (isClamped.test(step)) {
        steps.stream()
            .filter(later -> later.number() > step.number())
            .filter(later -> touched(later).stream().anyMatch(touched(step)::contains))
            .findFirst()
            .ifPresent(
                later ->
                    off.computeIfAbsent(later.number(), key -> new ArrayList<>())
                        .add(step.number()));
      }
    }
  }

  /** The numbers of the steps whose clamps a step takes off. */
  List<Integer> of(Step step) {
    return off.getOrDefault(step.number(), List.of());
  }

  private static Set<String> touched(Step step) {
    Set<String> parts = new LinkedHashSet<>(step.targets());
    parts.addAll(step.standing());
    return parts;
  }
}
