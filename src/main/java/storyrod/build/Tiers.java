package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import storyrod.build.BuildPlan.Step;

/** What comes to what stands, in the order in which it comes. */
final class Tiers {
  private final List<List<Operation>> tiers = new ArrayList<>();

  private Tiers() {}

  /** In each tier of a step, what is joined to parts of the tier before. */
  static List<List<Operation>> of(Step step) {
    Tiers tiers = new Tiers();
    step.operations().stream()
        .filter(each -> each.verb() == Verb.FIT)
        .filter(each -> !(step.standing().isEmpty() && each.joints().isEmpty()))
        .forEach(tiers::add);
    return tiers.tiers;
  }

  private void add(Operation operation) {
    int tier = tier(operation);
    if (tier == tiers.size()) {
      tiers.add(new ArrayList<>());
    }
    tiers.get(tier).add(operation);
  }

  private int tier(Operation operation) {
    int tier = tiers.size();
    while (tier > 0 && tiers.get(tier - 1).stream().noneMatch(operation::meets)) {
      tier--;
    }
    return tier;
  }
}
