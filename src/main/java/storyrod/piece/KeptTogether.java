package storyrod.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.geometry.Range;

/** What kept cutouts ask of each other: one blank, one method, each part cut out once. */
final class KeptTogether {
  private KeptTogether() {}

  static List<Diagnostic> faults(List<KeptCutout> kept) {
    List<Diagnostic> faults = new ArrayList<>();
    Map<String, KeptCutout> byKept = new LinkedHashMap<>();
    for (int i = 0; i < kept.size(); i++) {
      KeptCutout two = kept.get(i);
      Optional.ofNullable(byKept.putIfAbsent(two.kept(), two))
          .ifPresent(one -> faults.add(twice(one, two)));
      kept.subList(0, i).stream()
          .filter(one -> one.board().equals(two.board()))
          .flatMap(one -> fault(one, two).stream())
          .findFirst()
          .ifPresent(faults::add);
    }
    kept.stream()
        .filter(each -> byKept.containsKey(each.board()))
        .map(each -> nested(byKept.get(each.board()), each))
        .forEach(faults::add);
    return faults;
  }

  private static Diagnostic twice(KeptCutout one, KeptCutout two) {
    return Diagnostic.error(
            "kept-twice", two.at(), two.kept() + " is cut out of " + one.board() + " already")
        .also(one.at(), "it is cut out here")
        .hint("describe a part of its own for each piece that is kept");
  }

  private static Diagnostic nested(KeptCutout outer, KeptCutout inner) {
    return Diagnostic.error(
            "kept-nested",
            inner.at(),
            "%s is cut out of %s, which is itself cut out of %s"
                .formatted(inner.kept(), inner.board(), outer.board()))
        .also(outer.at(), outer.kept() + " is cut out here")
        .hint("cut " + inner.kept() + " from stock of its own: leave `kept-as` out of its cutout");
  }

  private static Optional<Diagnostic> fault(KeptCutout one, KeptCutout two) {
    if (one.method() != two.method() || !one.kerf().equals(two.kerf())) {
      return Optional.of(
          at(one, two, "%s and %s are cut out of %s with different tools or kerfs")
              .hint("cut everything that is kept of one board by one method with one kerf"));
    }
    if (meet(one.along(), two.along()) && meet(one.across(), two.across())) {
      return Optional.of(
          at(one, two, "the openings for %s and %s in %s leave no wood between them")
              .hint("move them apart"));
    }
    boolean cannotBeRipped =
        one.isSawn() && !one.across().equals(two.across()) && meet(one.across(), two.across());
    return cannotBeRipped
        ? Optional.of(
            at(one, two, "no rip right through %3$s frees both %1$s and %2$s")
                .hint(
                    "make both openings equally wide and in line along the grain, or leave wood"
                        + " between their strips")
                .hint("or cut them out by `router`, which needs no rips"))
        : Optional.empty();
  }

  private static Diagnostic at(KeptCutout one, KeptCutout two, String message) {
    return Diagnostic.error(
            "kept-together", two.at(), message.formatted(one.kept(), two.kept(), two.board()))
        .also(one.at(), one.kept() + " is cut out here");
  }

  private static boolean meet(Range one, Range two) {
    return !one.to().isShorterThan(two.from()) && !two.to().isShorterThan(one.from());
  }
}
