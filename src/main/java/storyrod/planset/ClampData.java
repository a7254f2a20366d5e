package storyrod.planset;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping;
import storyrod.build.Clamping.Clamps;
import storyrod.piece.Piece;

/** Where the clamps of a step go, in parts as they are spoken of. */
record ClampData(Piece piece, PartPhrases phrases) {
  /** The values of a step that builds on a level. */
  Map<String, Object> of(Step step, String level) {
    Clamping.Found found = Clamping.of(piece, step);
    return Map.of(
        "clamps", found.clamps().stream().map(each -> data(each, level)).distinct().toList(),
        "clampsBare", !found.bare().isEmpty());
  }

  private Map<String, Object> data(Clamps clamps, String level) {
    return Map.of(
        "axis", clamps.axis().name().toLowerCase(Locale.ROOT),
        "count", clamps.count(),
        "opening", piece.description().format().formatWithUnit(clamps.opening()),
        "on", phrases.units(List.of(clamps.low(), clamps.high()), level));
  }
}
