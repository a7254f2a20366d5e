package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Traits;
import storyrod.piece.Dovetails;
import storyrod.piece.Joint;
import storyrod.piece.Nesting;

/**
 * The values of a step in which parts come home one after the other.
 *
 * @param levels by the name of each unit, what it is put into
 */
record TierData(PartPhrases phrases, Map<String, String> levels) {
  /**
   * The values of a step.
   *
   * @param level what is built on
   * @param built the sub-assemblies that the step builds
   */
  Map<String, Object> of(Step step, String level, List<String> built) {
    return Map.of(
        "tiers", tiers(step, level),
        "gluing", phrases.units(glued(step), level),
        "whole", phrases.assemblies(isWhole(step, built) ? built : List.of()));
  }

  /** What comes home in each tier, and whether it has glue. */
  private List<Map<String, Object>> tiers(Step step, String level) {
    List<Map<String, Object>> tiers = new ArrayList<>();
    for (List<Operation> tier : step.tiers()) {
      List<String> parts = tier.stream().flatMap(each -> each.parts().stream()).toList();
      boolean glued = tier.stream().anyMatch(TierData::isGlued);
      boolean moves = parts.stream().map(phrases.piece()::part).noneMatch(Traits::isSheet);
      tiers.add(
          Map.of(
              "moving",
              phrases.units(parts, level),
              "glued",
              glued,
              "solid",
              moves,
              "pinned",
              isPinned(tier)));
    }
    return tiers;
  }

  private static List<String> glued(Step step) {
    return step.tiers().stream()
        .flatMap(List::stream)
        .filter(TierData::isGlued)
        .flatMap(each -> each.parts().stream())
        .toList();
  }

  /** Whether what moves has the pins, so that it is struck at its far end and not on the tails. */
  private boolean isPinned(List<Operation> tier) {
    return tier.stream()
        .flatMap(each -> each.parts().stream())
        .flatMap(name -> phrases.piece().part(name).cuts(Dovetails.class).stream())
        .noneMatch(Dovetails::isTails);
  }

  private static boolean isGlued(Operation operation) {
    return operation.joints().stream().anyMatch(Joint::glued);
  }

  /** Whether the step puts whole sub-assemblies together, each from all its units. */
  private boolean isWhole(Step step, List<String> built) {
    List<String> targets = step.operations().stream().map(Operation::target).toList();
    return !built.contains(Nesting.PIECE)
        && levels.entrySet().stream()
            .filter(each -> built.contains(each.getValue()))
            .allMatch(each -> targets.contains(each.getKey()));
  }
}
