package storyrod.planset;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
        "clamps", alike(found.clamps(), level).stream().map(each -> data(each, level)).toList(),
        "clampsBare", !found.bare().isEmpty());
  }

  /** Clamps that are spoken of in the same words, told once with all of them counted. */
  private Collection<List<Clamps>> alike(List<Clamps> all, String level) {
    return all.stream()
        .collect(
            Collectors.groupingBy(
                each -> List.of(each.axis(), each.opening(), on(List.of(each), level)),
                LinkedHashMap::new,
                Collectors.toList()))
        .values();
  }

  private List<Map<String, Object>> on(List<Clamps> clamps, String level) {
    List<String> parts =
        clamps.stream().flatMap(each -> Stream.of(each.low(), each.high())).distinct().toList();
    return phrases.units(parts, level);
  }

  private Map<String, Object> data(List<Clamps> clamps, String level) {
    Clamps first = clamps.getFirst();
    return Map.of(
        "axis", first.axis().name().toLowerCase(Locale.ROOT),
        "count", clamps.stream().mapToInt(Clamps::count).sum(),
        "opening", piece.description().format().formatWithUnit(first.opening()),
        "on", on(clamps, level));
  }
}
