package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Levels;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.build.WeakUnits;
import storyrod.build.WeakUnits.Fitted;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/** What has to be handled with care in a step, since it hangs on one line of glue. */
final class CareData {
  private final PartPhrases phrases;
  private final Map<String, String> levels;
  private final List<Care> cares = new ArrayList<>();

  /** Parts that are weak from one step until the end of another, in which others come on. */
  private record Care(
      String level, List<String> parts, int from, int until, List<String> stiffener) {}

  CareData(Piece piece, PartPhrases phrases, List<Step> steps) {
    this.phrases = phrases;
    this.levels = Levels.byUnit(piece);
    Map<String, List<Fit>> byLevel = new LinkedHashMap<>();
    for (Step step : steps) {
      step.operations().stream()
          .filter(operation -> operation.verb() == Verb.FIT)
          .forEach(
              fit ->
                  byLevel
                      .computeIfAbsent(level(fit), l -> new ArrayList<>())
                      .add(new Fit(step, fit)));
    }
    byLevel.forEach((level, fits) -> look(new WeakUnits(piece), level, fits));
  }

  private String level(Operation fit) {
    return levels.getOrDefault(fit.target(), Nesting.PIECE);
  }

  private record Fit(Step step, Operation operation) {
    Fitted fitted() {
      return new Fitted(operation.parts(), operation.joints());
    }
  }

  private void look(WeakUnits weak, String level, List<Fit> fits) {
    for (WeakUnits.Weak each : weak.in(fits.stream().map(Fit::fitted).toList())) {
      Fit from = fits.get(each.from());
      Fit until = fits.get(each.until());
      if (from.step() != until.step()) {
        cares.add(
            new Care(
                level,
                fits.get(each.unit()).operation().parts(),
                from.step().number(),
                until.step().number(),
                until.step().movingParts()));
      }
    }
  }

  /** Whether a step fits something into what holds weak parts, or may handle it otherwise. */
  private boolean handles(Step step, String level) {
    return step.verb() != Verb.FIT
        || step.operations().stream().map(this::level).anyMatch(level::equals);
  }

  /** One entry for each later step that is waited for. */
  List<Map<String, Object>> of(Step step) {
    Map<Integer, List<Care>> byUntil = new LinkedHashMap<>();
    cares.stream()
        .filter(care -> care.from() <= step.number() && step.number() < care.until())
        .filter(care -> handles(step, care.level()))
        .forEach(care -> byUntil.computeIfAbsent(care.until(), k -> new ArrayList<>()).add(care));
    List<Map<String, Object>> all = new ArrayList<>();
    byUntil.forEach(
        (until, same) ->
            all.add(
                Map.of(
                    "step",
                    until,
                    "held",
                    phrases.parts(same.stream().flatMap(care -> care.parts().stream()).toList()),
                    "stiffener",
                    phrases.units(
                        same.stream()
                            .flatMap(care -> care.stiffener().stream())
                            .distinct()
                            .toList(),
                        Nesting.PIECE))));
    return all;
  }
}
