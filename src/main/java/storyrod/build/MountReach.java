package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import storyrod.build.BuildPlan.Step;
import storyrod.build.MountSites.Site;
import storyrod.description.Diagnostic;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Finds hardware that no hand screws on, or no drill bores for, past what stands when it is first
 * mounted. The order has been chosen to leave room for it where that can be.
 */
record MountReach(Piece piece, MountLines mounts) {
  List<Diagnostic> findings(List<Step> steps) {
    List<Diagnostic> findings = new ArrayList<>();
    Set<String> fitted = new LinkedHashSet<>();
    Set<String> mounted = new LinkedHashSet<>();
    for (Step step : steps) {
      fitted.addAll(step.newParts());
      step.operations().stream()
          .filter(each -> each.verb() == Verb.TRIAL_FIT || each.verb() == Verb.MOUNT)
          .filter(each -> mounted.add(each.target()))
          .forEach(each -> findings.addAll(findings(each.target(), fitted)));
    }
    return findings;
  }

  /** One for each entry of the hardware list. */
  private List<Diagnostic> findings(String item, Set<String> fitted) {
    List<Diagnostic> findings = new ArrayList<>();
    Set<Object> told = new LinkedHashSet<>();
    mounts.sites().stream()
        .filter(site -> site.entry().item().value().equals(item))
        .forEach(
            site ->
                finding(site, fitted)
                    .filter(found -> told.add(site.entry().at()))
                    .ifPresent(findings::add));
    return findings;
  }

  private Optional<Diagnostic> finding(Site site, Set<String> fitted) {
    Predicate<String> there = mounts.isRound(site).and(fitted::contains);
    Optional<String> hand = mounts.blocker(site, there, MountLines.HAND_MM);
    if (hand.isPresent() || !site.drilled() || mounts.isEarly(site)) {
      return hand.map(part -> told(site, part, "screws", "driven"));
    }
    return mounts
        .blocker(site, there, MountLines.DRILL_MM)
        .map(part -> told(site, part, "pilot holes", "drilled"));
  }

  private Diagnostic told(Site site, String inTheWay, String what, String done) {
    Part blocking = piece.part(inTheWay);
    return Diagnostic.advice(
            "mount-blocked",
            site.entry().item().at(),
            "the %s of `%s` in `%s` cannot be %s: `%s` stands in the way of the tool"
                .formatted(what, site.entry().item().value(), site.part().name(), done, inTheWay))
        .also(blocking.at(), "`" + inTheWay + "` is there by then")
        .hint(
            "leave more room between them, or see that a right-angle tool and a hand find room;"
                + " a hole in `"
                + inTheWay
                + "` lets a long bit through");
  }
}
