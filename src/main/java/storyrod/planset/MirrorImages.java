package storyrod.planset;

import java.util.Comparator;
import java.util.LinkedHashMap;
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

  /**
   * Which parts each of them takes: those that sit elsewhere in the others, or that are mirrored
   * there. Each with {@code name}, the sub-assembly, and {@code parts}, with {@code hand} too.
   */
  List<Map<String, Object>> taken(Step step) {
    if (of(step).isEmpty()) {
      return List.of();
    }
    List<List<Part>> units =
        fit.builtIn(step).stream().map(Nesting.of(phrases.piece())::parts).toList();
    return fit.builtIn(step).stream()
        .<Map<String, Object>>map(
            name -> Map.of("name", phrases.assemblies(List.of(name)), "parts", taken(name, units)))
        .filter(unit -> !((List<?>) unit.get("parts")).isEmpty())
        .toList();
  }

  private List<Map<String, Object>> taken(String unit, List<List<Part>> units) {
    return Nesting.of(phrases.piece()).parts(unit).stream()
        .filter(part -> !phrases.places(part).isEmpty() && isElsewhere(part, units))
        .sorted(Comparator.comparing(part -> phrases.places(part).getFirst()))
        .<Map<String, Object>>map(
            part -> {
              Map<String, Object> data = new LinkedHashMap<>(phrases.part(part));
              data.put(
                  "hand", TurnData.hand(phrases.piece().mark(part.mark()), List.of(part.name())));
              return data;
            })
        .toList();
  }

  /** Whether one of the others has no part of its mark in its place, or one that is mirrored. */
  private boolean isElsewhere(Part part, List<List<Part>> units) {
    return phrases.piece().mark(part.mark()).mirrored() > 0
        || units.stream()
            .anyMatch(unit -> unit.stream().noneMatch(other -> isAlikePlaced(other, part)));
  }

  private boolean isAlikePlaced(Part one, Part other) {
    return one.mark().equals(other.mark()) && phrases.places(one).equals(phrases.places(other));
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
