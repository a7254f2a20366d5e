package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping;
import storyrod.build.Clamping.Clamps;
import storyrod.piece.Piece;

/** Where the clamps of a step go, in parts as they are spoken of. */
record ClampData(Piece piece, PartPhrases phrases) {
  /** The values of a step that builds on a level. */
  Map<String, Object> of(Step step, String level) {
    Clamping.Found found = Clamping.of(piece, step);
    Map<List<String>, List<Map<String, Object>>> alike =
        found.clamps().stream()
            .collect(
                Collectors.groupingBy(
                    this::setting,
                    LinkedHashMap::new,
                    Collectors.mapping(
                        each -> jaws(each, level),
                        Collectors.collectingAndThen(
                            Collectors.toList(), all -> all.stream().distinct().toList()))));
    return Map.of(
        "clamps",
        alike.entrySet().stream().map(each -> data(each.getKey(), each.getValue())).toList(),
        "clampsBare",
        !found.bare().isEmpty());
  }

  /** Which way clamps lie and how far they open: those alike in both are told in one. */
  private List<String> setting(Clamps clamps) {
    return List.of(
        clamps.axis().name().toLowerCase(Locale.ROOT),
        piece.description().format().formatWithUnit(clamps.opening()));
  }

  private Map<String, Object> jaws(Clamps clamps, String level) {
    return Map.of(
        "count", clamps.count(),
        "on", phrases.units(List.of(clamps.low(), clamps.high()), level));
  }

  private static Map<String, Object> data(List<String> setting, List<Map<String, Object>> jaws) {
    return Map.of(
        "axis", setting.getFirst(),
        "opening", setting.getLast(),
        "count", jaws.stream().mapToInt(each -> (int) each.get("count")).sum(),
        "jaws", jaws);
  }
}
