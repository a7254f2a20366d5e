package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.GlueTimes;
import storyrod.build.GlueTurns;
import storyrod.build.PanelClamps;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The clamps of a step that glues up panels, packs of layers, or boards that were cut apart. */
record PanelData(Piece piece, PartPhrases phrases, Words words) {
  Map<String, Object> of(Step step) {
    PanelClamps clamps = new PanelClamps(piece);
    Map<Integer, List<String>> byCount =
        PanelClamps.glued(piece, step)
            .collect(
                Collectors.groupingBy(
                    clamps::count,
                    LinkedHashMap::new,
                    Collectors.mapping(Part::name, Collectors.toList())));
    GlueTurns turns = GlueTurns.of(piece, step);
    int shop = piece.description().shop().clamps();
    int most = byCount.keySet().stream().mapToInt(each -> each).max().orElse(0);
    List<List<Part>> rounds = clamps.rounds(step);
    boolean isMixed = rounds.size() > 1 && byCount.size() > 1;
    return Map.of(
        "panelRounds",
        isMixed
            ? rounds.stream()
                .map(round -> phrases.parts(round.stream().map(Part::name).toList()))
                .toList()
            : List.of(),
        "panelClamped",
        byCount.entrySet().stream()
            .map(each -> Map.of("count", each.getKey(), "parts", phrases.parts(each.getValue())))
            .toList(),
        "panelCount",
        turns.units(),
        "turns",
        turns.turns(),
        "atOnce",
        turns.atOnce(),
        "shopClamps",
        shop,
        "clampsShort",
        Math.max(0, most - shop),
        "clampWait",
        new Durations(words).spoken(GlueTimes.of(piece.description()).clampMinutes()));
  }
}
