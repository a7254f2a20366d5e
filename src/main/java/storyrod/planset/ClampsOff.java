package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import storyrod.build.BuildPlan.Step;
import storyrod.build.ClampsInUse;

/**
 * Which clamps come off before a step: those of all glue-ups whose parts it is the first to need,
 * and the earliest set of the rest, as far as it finds too few left in the shop.
 */
final class ClampsOff {
  private final int shop;
  private final List<Step> held = new ArrayList<>();
  private final Map<Integer, List<Integer>> off = new TreeMap<>();

  /**
   * Follows the clamps through the steps.
   *
   * @param shop how many clamps there are
   */
  ClampsOff(List<Step> steps, Predicate<Step> isClamped, int shop) {
    this.shop = shop;
    for (Step step : steps) {
      List<Step> free =
          new ArrayList<>(held.stream().filter(each -> isNeeded(each, step)).toList());
      held.removeAll(free);
      boolean clamped = isClamped.test(step);
      while (clamped && !held.isEmpty() && isTooMuch(step)) {
        free.add(held.removeFirst());
      }
      off.put(step.number(), free.stream().map(Step::number).sorted().toList());
      if (clamped) {
        held.add(step);
      }
    }
  }

  private static boolean isNeeded(Step glued, Step later) {
    return ClampsInUse.touched(later).stream().anyMatch(ClampsInUse.touched(glued)::contains);
  }

  private boolean isTooMuch(Step step) {
    int wanted = Math.min(shop, ClampsInUse.by(step));
    return wanted + held.stream().mapToInt(ClampsInUse::by).sum() > shop;
  }

  /** The numbers of the steps whose clamps a step takes off. */
  List<Integer> of(Step step) {
    return off.getOrDefault(step.number(), List.of());
  }

  /** Whether the clamps of a step come off in a later one. */
  boolean isLater(Step step) {
    return off.values().stream().anyMatch(numbers -> numbers.contains(step.number()));
  }
}
