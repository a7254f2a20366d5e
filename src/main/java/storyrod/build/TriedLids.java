package storyrod.build;

import java.util.List;
import storyrod.build.BuildPlan.Step;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** The lids that are tried in their grooves when what has the grooves is put together dry. */
public record TriedLids(Piece piece, List<Step> steps) {
  /** Those that slide in grooves of a dry fit's parts and are cut by then, by full name. */
  public List<String> in(Step step) {
    return step.verb() == Verb.DRY_FIT ? among(step, step.targets()) : List.of();
  }

  private List<String> among(Step step, List<String> parts) {
    return piece.joints().stream()
        .filter(joint -> joint.slides() && parts.contains(joint.second()))
        .map(Joint::first)
        .filter(lid -> !parts.contains(lid))
        .distinct()
        .filter(lid -> steps.stream().noneMatch(later -> isCutIn(later, step, lid)))
        .toList();
  }

  private static boolean isCutIn(Step later, Step step, String lid) {
    return later.number() > step.number()
        && later.verb() == Verb.CUT
        && later.targets().contains(lid);
  }
}
