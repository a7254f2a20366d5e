package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.GlueTimes;
import storyrod.build.GlueTurns;
import storyrod.build.PanelClamps;
import storyrod.build.Verb;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;
import storyrod.words.Words;

/** The clamps of a step that glues up panels, packs of layers, or boards that were cut apart. */
record PanelData(Piece piece, PartPhrases phrases, Words words) {
  /** So many seams get their glue and their clamps within its open time (common practice). */
  private static final int MOST_SEAMS = 4;

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
        "inGroups",
        step.verb() == Verb.MILL ? inGroups(step) : List.of(),
        "clampWait",
        new Durations(words).spoken(GlueTimes.of(piece.description()).clampMinutes()));
  }

  /** Panels of many seams, with how many of their boards make a group that the planer takes. */
  private List<Map<String, Object>> inGroups(Step step) {
    return PanelClamps.panels(piece, step).stream()
        .filter(panel -> !piece.isLaminated(panel.first()))
        .flatMap(panel -> inGroups(panel).stream())
        .toList();
  }

  private Optional<Map<String, Object>> inGroups(GluedPanel panel) {
    int boards = piece.isStaved(panel.first()) ? piece.staves(panel.first()).orElse(1) : 1;
    long planer = piece.description().shop().planerWidth().ticks();
    long each = planer / Math.max(1, piece.staveWidth(panel.first()).ticks());
    return boards - 1 <= MOST_SEAMS || each < 2 || each >= boards
        ? Optional.empty()
        : Optional.of(
            Map.of("parts", phrases.parts(panel.names()), "seams", boards - 1, "each", (int) each));
  }

  private Map<String, Object> data(Clamped clamped, List<GluedPanel> panels) {
    return Map.of(
        "count", clamped.count(),
        "shared", clamped.isShared(),
        "panels", panels.size(),
        "parts", phrases.parts(GluedPanel.names(panels)));
  }
}
