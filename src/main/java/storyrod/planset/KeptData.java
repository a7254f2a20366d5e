package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.build.BuildPlan.Step;
import storyrod.measure.Length;
import storyrod.piece.KeptBoard;
import storyrod.piece.KeptCutout;
import storyrod.piece.Piece;
import storyrod.piece.SawnBlank;

/** The values of a step that cuts kept pieces out of boards, glues these together or trims them. */
record KeptData(Piece piece, PartPhrases phrases) {
  /** For the boards of a step, equal ones once, what is cut out of them and how. */
  Map<String, Object> of(Step step) {
    Map<String, List<KeptBoard>> alike = new LinkedHashMap<>();
    for (KeptBoard board : boards(step)) {
      alike.computeIfAbsent(board.board().mark(), mark -> new ArrayList<>()).add(board);
    }
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("boards", alike.values().stream().map(this::board).toList());
    data.put("allBoards", phrases.parts(boards(step).stream().map(KeptData::name).toList()));
    data.put(
        "allKept",
        phrases.parts(boards(step).stream().flatMap(each -> each.kept().stream()).toList()));
    return data;
  }

  /** The boards that a step is done to, or of which the parts come that it is done to. */
  private List<KeptBoard> boards(Step step) {
    return step.operations().stream()
        .map(each -> piece.keptAs(each.target()).map(KeptCutout::board).orElse(each.target()))
        .distinct()
        .flatMap(name -> piece.keptBoard(name).stream())
        .toList();
  }

  private static String name(KeptBoard board) {
    return board.board().name();
  }

  private Map<String, Object> board(List<KeptBoard> alike) {
    KeptBoard shown = alike.getFirst();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("parts", phrases.parts(alike.stream().map(KeptData::name).toList()));
    data.put("mark", shown.board().mark());
    data.put("keptMarks", phrases.marks(alike.stream().flatMap(e -> e.kept().stream()).toList()));
    data.put("kerf", format(shown.kerf()));
    data.put("bit", piece.description().printed().forBits().formatWithUnit(shown.kerf()));
    data.put("radius", format(half(shown.kerf())));
    data.put("wider", format(shown.oversize()));
    data.put("width", format(shown.board().finishedWidth()));
    data.put("blank", sizes(shown.blankLength(), shown.blankWidth()));
    data.put("openings", openings(alike));
    data.put("rips", shown.isSawn() ? cuts(shown, true) : List.of());
    data.put("crosscuts", shown.isSawn() ? cuts(shown, false) : List.of());
    return data;
  }

  private static Length half(Length length) {
    return length.dividedBy(2, java.math.RoundingMode.HALF_UP);
  }

  /** The openings of equal boards, those of one size together. */
  private List<Map<String, Object>> openings(List<KeptBoard> alike) {
    Map<List<Length>, List<KeptCutout>> bySize = new LinkedHashMap<>();
    alike.stream()
        .flatMap(board -> board.cutouts().stream())
        .forEach(
            each ->
                bySize
                    .computeIfAbsent(
                        List.of(each.keptLength(), each.keptWidth(), each.widthOffTheTool()),
                        size -> new ArrayList<>())
                    .add(each));
    return bySize.values().stream().map(this::opening).toList();
  }

  private Map<String, Object> opening(List<KeptCutout> equal) {
    KeptCutout kept = equal.getFirst();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("kept", phrases.parts(equal.stream().map(KeptCutout::kept).toList()));
    data.put("opening", sizes(kept.along().length(), kept.across().length()));
    data.put("length", format(kept.along().length()));
    data.put("offTheTool", sizes(kept.keptLength(), kept.widthOffTheTool()));
    data.put("finished", sizes(kept.keptLength(), kept.keptWidth()));
    data.put("gap", format(kept.sideGap()));
    data.put("trims", kept.isSawn() && kept.gap().isPositive());
    return data;
  }

  private List<Map<String, Object>> cuts(KeptBoard board, boolean rips) {
    return SawnBlank.of(board).cuts(rips).stream()
        .map(cut -> Map.<String, Object>of("number", cut.number(), "size", format(cut.comesOff())))
        .toList();
  }

  private String sizes(Length length, Length width) {
    return piece.description().printed().format(length) + " × " + format(width);
  }

  private String format(Length length) {
    return piece.description().printed().formatWithUnit(length);
  }
}
