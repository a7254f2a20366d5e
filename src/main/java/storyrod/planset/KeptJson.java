package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.KeptBoard;
import storyrod.piece.KeptCutout;
import storyrod.piece.Piece;
import storyrod.piece.SawnBlank;

/** What is cut out of boards and kept, for {@code plan.json}; lengths in whole micrometres. */
final class KeptJson {
  private KeptJson() {}

  static List<Map<String, Object>> of(Piece piece) {
    return piece.parts().stream()
        .flatMap(part -> piece.keptBoard(part.name()).stream())
        .map(KeptJson::board)
        .toList();
  }

  private static Map<String, Object> board(KeptBoard board) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("board", board.board().name());
    json.put("method", board.method().word());
    json.put("kerf_um", um(board.kerf()));
    json.put("blank_length_um", um(board.blankLength()));
    json.put("blank_width_um", um(board.blankWidth()));
    json.put("kept", board.cutouts().stream().map(KeptJson::kept).toList());
    if (board.isSawn()) {
      SawnBlank blank = SawnBlank.of(board);
      json.put("strips_um", blank.strips().stream().map(each -> um(each.width())).toList());
      json.put("saw_cuts", blank.cuts().stream().map(KeptJson::cut).toList());
    }
    return json;
  }

  private static Map<String, Object> kept(KeptCutout kept) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("part", kept.kept());
    json.put("opening_um", CutJson.box(kept.opening()));
    json.put("end_gap_um", um(kept.endGap()));
    json.put("side_gap_um", um(kept.sideGap()));
    json.put("length_um", um(kept.keptLength()));
    json.put("width_off_the_tool_um", um(kept.widthOffTheTool()));
    json.put("width_um", um(kept.keptWidth()));
    return json;
  }

  private static Map<String, Object> cut(SawnBlank.SawCut cut) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("number", cut.number());
    json.put("rip", cut.isRip());
    json.put("at_um", um(cut.at()));
    json.put("run_um", range(cut.run()));
    json.put("comes_off_um", um(cut.comesOff()));
    return json;
  }

  private static List<Long> range(Range range) {
    return List.of(um(range.from()), um(range.to()));
  }

  private static long um(Length length) {
    return length.toMicrometres();
  }
}
