package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.GlueTimes;
import storyrod.build.GlueTurns;
import storyrod.build.PanelClamps;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;
import storyrod.words.Words;

/** The clamps of a step that glues up panels, packs of layers, or boards that were cut apart. */
record PanelData(Piece piece, PartPhrases phrases, Words words) {
  /** So many clamps, for one part or for what several are sawn from later. */
  private record Clamped(int count, boolean isShared) {}

  Map<String, Object> of(Step step) {
    PanelClamps clamps = new PanelClamps(piece);
    Map<Clamped, List<GluedPanel>> byCount =
        PanelClamps.panels(piece, step).stream()
            .collect(
                Collectors.groupingBy(
                    panel -> new Clamped(clamps.count(panel), panel.isShared()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    GlueTurns turns = GlueTurns.of(piece, step);
    int shop = piece.description().shop().clamps();
    int most = byCount.keySet().stream().mapToInt(Clamped::count).max().orElse(0);
    List<List<GluedPanel>> rounds = clamps.rounds(step);
    boolean isMixed = rounds.size() > 1 && byCount.size() > 1;
    return Map.of(
        "panelRounds",
        isMixed
            ? rounds.stream().map(round -> phrases.parts(GluedPanel.names(round))).toList()
            : List.of(),
        "panelClamped",
        byCount.entrySet().stream().map(each -> data(each.getKey(), each.getValue())).toList(),
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

  private Map<String, Object> data(Clamped clamped, List<GluedPanel> panels) {
    return Map.of(
        "count", clamped.count(),
        "shared", clamped.isShared(),
        "panels", panels.size(),
        "parts", phrases.parts(GluedPanel.names(panels)));
  }
}
