package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.build.BuildPlan.Step;
import storyrod.build.DryFits;
import storyrod.build.Levels;
import storyrod.build.Operation;
import storyrod.build.Trials;
import storyrod.build.Verb;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The values of what is put together, or hung, on trial. */
final class TrialData {
  private final Piece piece;
  private final PartPhrases phrases;
  private final List<Step> steps;
  private final Map<String, String> levels;
  private final Trials trials;

  TrialData(Piece piece, PartPhrases phrases, List<Step> steps) {
    this.piece = piece;
    this.phrases = phrases;
    this.steps = steps;
    this.levels = Levels.byUnit(piece);
    this.trials = new Trials(piece);
  }

  /** What a step puts together dry: sub-assemblies, or the piece. */
  Map<String, Object> dry(Step step) {
    Map<String, List<String>> byLevel = new LinkedHashMap<>();
    for (Operation operation : step.operations()) {
      Optional.ofNullable(levels.get(operation.target()))
          .ifPresent(
              level ->
                  byLevel
                      .computeIfAbsent(level, key -> new ArrayList<>())
                      .addAll(operation.parts()));
    }
    List<Map<String, Object>> together = new ArrayList<>();
    byLevel.forEach((level, parts) -> together.addAll(phrases.units(parts, level)));
    return Map.of("together", together, "whole", whole(step));
  }

  /** The sub-assemblies that were put together before, and do not come apart again. */
  private List<Map<String, Object>> whole(Step step) {
    return step.operations().stream()
        .flatMap(each -> phrases.units(each.parts(), inside(each.target())).stream())
        .filter(unit -> unit.get("mark").equals(""))
        .toList();
  }

  private String inside(String target) {
    return piece.description().assemblies().containsKey(target) ? target : Nesting.PIECE;
  }

  /** What hardware hangs, and how much of it there is. */
  Map<String, Object> hanging(Step step) {
    String item = step.operations().getFirst().target();
    List<HardwareEntry> entries =
        piece.description().hardware().stream()
            .filter(entry -> entry.item().value().equals(item))
            .toList();
    return Map.of(
        "backed", new Surround(piece).hasBack(),
        "hung", phrases.units(trials.partsHung(item), Nesting.PIECE),
        "tried",
            Map.of(
                "kind", Words.hyphenated(piece.kind(item)),
                "title", piece.item(item).map(ItemEntry::title).orElse(item),
                "count", entries.stream().mapToInt(HardwareEntry::count).sum(),
                "screws",
                    entries.stream().mapToInt(each -> each.count() * each.screwsEach()).sum()));
  }

  /** Whether all that a step fits was together before without glue. */
  boolean isTriedDry(Step step) {
    List<String> tried =
        steps.stream()
            .filter(each -> each.verb() == Verb.DRY_FIT && each.number() < step.number())
            .flatMap(each -> each.operations().stream())
            .map(Operation::target)
            .toList();
    return step.operations().stream()
        .map(fit -> levels.getOrDefault(fit.target(), Nesting.PIECE))
        .map(DryFits::target)
        .allMatch(tried::contains);
  }

  /** Whether what hangs parts was fitted on trial. */
  boolean isTried(List<String> parts) {
    return piece.description().hardware().stream()
        .filter(entry -> entry.parts().stream().anyMatch(part -> parts.contains(part.value())))
        .anyMatch(entry -> Trials.asksFor(piece, entry.item().value()));
  }
}
