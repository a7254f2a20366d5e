package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedBlank;
import storyrod.stock.GluedPanel;

/** The panels and laminations that are glued up before anything is cut in them, in one table. */
public record GlueUpList(List<Row> rows) {
  public GlueUpList {
    rows = List.copyOf(rows);
  }

  /**
   * The blanks of a mark, as printed.
   *
   * @param of from how many boards each is made
   * @param board the size of a board when it is jointed and planed
   * @param blank the size of what is glued up
   * @param laid how the annual rings lie
   */
  public record Row(
      String mark, String part, int count, String of, String board, String blank, String laid) {}

  static GlueUpList of(PlanSet set, Texts texts) {
    return new GlueUpList(
        set.stock().gluedUp().stream().map(blank -> row(set.piece(), blank, texts)).toList());
  }

  GlueUpList only(Chosen chosen) {
    return new GlueUpList(
        rows.stream().filter(row -> chosen.marks().contains(row.mark())).toList());
  }

  private static Row row(Piece piece, GluedBlank blank, Texts texts) {
    String boards = boards(blank, texts);
    return new Row(
        blank.mark(),
        piece.mark(blank.mark()).title(),
        blank.count(),
        shared(piece, blank).map(panel -> together(boards, panel, texts)).orElse(boards),
        texts.inUnits(in -> board(blank, in)),
        texts.inUnits(in -> size(blank, in.length(blank.width()), blank.thickness(), in)),
        laid(blank, texts));
  }

  /** The panel in which it is glued up in one length with others, too short for the machines. */
  private static Optional<GluedPanel> shared(Piece piece, GluedBlank blank) {
    List<Part> glued = piece.parts().stream().filter(piece::isPanel).toList();
    return GluedPanel.of(piece, glued).stream()
        .filter(GluedPanel::isShared)
        .filter(panel -> panel.parts().stream().anyMatch(p -> p.mark().equals(blank.mark())))
        .findFirst();
  }

  private static String together(String boards, GluedPanel panel, Texts texts) {
    return texts.say("glue-ups.together", boards, texts.inUnits(in -> in.length(panel.length())));
  }

  private static String boards(GluedBlank blank, Texts texts) {
    if (!blank.isLaminated()) {
      return blank
          .staves()
          .map(count -> texts.say("glue-ups.staves", count))
          .orElseGet(() -> texts.say("glue-ups.any-staves"));
    }
    if (!blank.isStaved()) {
      return texts.say("glue-ups.layers", blank.layers());
    }
    return blank
        .staves()
        .map(count -> texts.say("glue-ups.layers-of-staves", blank.layers(), count))
        .orElseGet(() -> texts.say("glue-ups.layers-of-any", blank.layers()));
  }

  private static String board(GluedBlank blank, Texts texts) {
    String width =
        blank.staveWidth().map(texts::length).orElseGet(() -> texts.say("glue-ups.any-width"));
    return size(blank, width, blank.layerThickness(), texts);
  }

  private static String size(GluedBlank blank, String width, Length thickness, Texts texts) {
    return texts.say("size.three", texts.length(blank.length()), width, texts.length(thickness));
  }

  private static String laid(GluedBlank blank, Texts texts) {
    String staves = texts.say(blank.matched() ? "glue-ups.matched" : "glue-ups.alternated");
    String layers = texts.say("glue-ups.heart-out");
    if (!blank.isLaminated()) {
      return staves;
    }
    return blank.isStaved() ? texts.say("glue-ups.laid-both", staves, layers) : layers;
  }

  /** The same for {@code plan.json}; what is not known is left out. */
  static Map<String, Object> json(GluedBlank blank) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("mark", blank.mark());
    json.put("count", blank.count());
    blank.staves().ifPresent(staves -> json.put("staves", staves));
    json.put("layers", blank.layers());
    blank.staveWidth().ifPresent(width -> json.put("board_width_um", width.toMicrometres()));
    json.put("board_thickness_um", blank.layerThickness().toMicrometres());
    json.put("length_um", blank.length().toMicrometres());
    json.put("width_um", blank.width().toMicrometres());
    json.put("thickness_um", blank.thickness().toMicrometres());
    if (blank.isStaved()) {
      json.put("staves_laid", blank.matched() ? "matched" : "alternated");
    }
    return json;
  }
}
