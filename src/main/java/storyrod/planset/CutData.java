package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.CutKind;
import storyrod.build.Operation;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Piece;

/** The values of a step that cuts or drills: what is set once, and the fence for each part. */
record CutData(Piece piece, PartPhrases phrases) {
  private static final String FENCE = "fence-";

  Map<String, Object> of(Step step) {
    Operation first = step.operations().getFirst();
    Cut cut = first.cuts().getFirst();
    CutKind kind = CutKind.of(piece.part(first.target()), cut);
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("term", kind.term());
    data.put("size", format(kind.size()));
    data.put("depth", kind.depth().isPositive() ? format(kind.depth()) : "");
    data.put("forKind", forKind(cut));
    return Map.of("cut", data, "fences", fences(step));
  }

  private String forKind(Cut cut) {
    return cut.forWhat()
        .flatMap(item -> Optional.ofNullable(piece.description().items().get(item)))
        .map(item -> item.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .orElse("");
  }

  /** Fence settings; parts with the same ones stand together. */
  private List<Map<String, Object>> fences(Step step) {
    Map<String, List<Map<String, Object>>> byPart = new LinkedHashMap<>();
    for (Setting setting : step.settings()) {
      if (setting.key().startsWith(FENCE)) {
        byPart
            .computeIfAbsent(setting.part().orElseThrow(), part -> new ArrayList<>())
            .add(
                Map.of(
                    "edge", setting.key().substring(FENCE.length()),
                    "value", format(setting.value())));
      }
    }
    Map<List<Map<String, Object>>, List<String>> alike = new LinkedHashMap<>();
    byPart.forEach(
        (part, values) -> alike.computeIfAbsent(values, v -> new ArrayList<>()).add(part));
    List<Map<String, Object>> fences = new ArrayList<>();
    alike.forEach(
        (values, parts) -> fences.add(Map.of("parts", phrases.parts(parts), "values", values)));
    return fences;
  }

  private String format(Length length) {
    return piece.description().format().formatWithUnit(length);
  }
}
