package storyrod.planset;

import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Traits;
import storyrod.description.ShopEntry;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;

/** The values of a step that mills parts or cuts them to size: their stock and its limits. */
record StockData(Piece piece, PartPhrases phrases) {
  /** What planing takes off both faces of a pack of layers (common practice). */
  private static final Length OFF_THE_PACK = Length.inch(1, 8);

  /** As wide a face as a jointer flattens that the shop does not describe (common practice). */
  private static final Length USUAL_JOINTER = Length.inches(6);

  Map<String, Object> of(Step step) {
    Part part = piece.part(step.operations().getFirst().target());
    List<String> names = step.targets();
    String thick = format(part.finishedThickness());
    Map<String, Object> stock =
        Map.of(
            "material", Texts.of(piece).wood(part.stock()),
            "thick", thick,
            "quarter", part.stock().figures().quarterSawn());
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("thickness", thick);
    data.put("stock", stock);
    List<GluedPanel> together = shared(names);
    List<String> shared = together.stream().flatMap(blank -> blank.names().stream()).toList();
    List<String> tooShort = names.stream().filter(this::isShort).toList();
    data.put("short", phrases.marks(tooShort));
    data.put("shortTogether", phrases.marks(shared));
    data.put(
        "shortAlone",
        phrases.marks(tooShort.stream().filter(name -> !shared.contains(name)).toList()));
    data.put("longBlanks", longBlanks(together));
    data.put("blanks", names.size() - shared.size() + together.size());
    data.put("staved", phrases.parts(names).stream().flatMap(this::staved).toList());
    data.put("layered", phrases.parts(names).stream().flatMap(this::layered).toList());
    data.put("alternated", phrases.parts(names.stream().filter(n -> isLaid(n, false)).toList()));
    data.put("matched", phrases.parts(names.stream().filter(n -> isLaid(n, true)).toList()));
    data.put("largePanels", phrases.parts(names.stream().filter(this::isLargePanel).toList()));
    data.put("quarterSawn", part.stock().figures().quarterSawn());
    data.put("tooWide", phrases.parts(names.stream().filter(this::isTooWide).toList()));
    data.put("overJointer", phrases.marks(names.stream().filter(this::isOverJointer).toList()));
    data.put(
        "jointer",
        piece.description().shop().machines().jointerWidth().map(this::format).orElse(""));
    data.put("made", phrases.marks(names.stream().filter(this::isMade).toList()));
    return data;
  }

  /** Whether boards of a known width, in the rough, are wider than the jointer. */
  private boolean isOverJointer(String name) {
    Part part = piece.part(name);
    ShopEntry shop = piece.description().shop();
    boolean isOfAnyBoards = piece.isPanel(part) && piece.staves(part).isEmpty();
    return !isOfAnyBoards
        && piece
            .staveWidth(part)
            .plus(shop.extraWidth(part.finishedLength()))
            .isLongerThan(shop.machines().jointerWidth().orElse(USUAL_JOINTER));
  }

  private boolean isMade(String name) {
    return piece.isMade(piece.part(name));
  }

  /** A part that is glued up from a known number of staves, with their number and width. */
  private Stream<Map<String, Object>> staved(Map<String, Object> phrase) {
    Part part = piece.mark((String) phrase.get("mark")).shown();
    return piece
        .staves(part)
        .map(count -> staved(phrase, count, format(piece.staveWidth(part))))
        .stream();
  }

  private static Map<String, Object> staved(Map<String, Object> phrase, int count, String width) {
    return Map.of("part", phrase, "count", count, "width", width);
  }

  /**
   * A part that is glued up face to face, with the number and the least thickness of its layers.
   */
  private Stream<Map<String, Object>> layered(Map<String, Object> phrase) {
    Part part = piece.mark((String) phrase.get("mark")).shown();
    int layers = piece.layers(part);
    Length each = part.finishedThickness().dividedBy(layers, RoundingMode.CEILING);
    return layers == 1
        ? Stream.empty()
        : Stream.of(
            Map.of(
                "part", phrase,
                "count", layers,
                "thick", format(each),
                "thicker", format(thicker(part, layers)),
                "staves", piece.staves(part).orElse(1),
                "width", format(piece.staveWidth(part))));
  }

  /** With what is planed off the pack when it is glued. */
  private static Length thicker(Part part, int layers) {
    return part.finishedThickness().plus(OFF_THE_PACK).dividedBy(layers, RoundingMode.CEILING);
  }

  private boolean isLaid(String name, boolean matched) {
    Part part = piece.part(name);
    return piece.isStaved(part) && piece.matchesStaves(part) == matched;
  }

  private boolean isShort(String name) {
    return GluedPanel.isShort(piece, piece.part(name));
  }

  private List<GluedPanel> shared(List<String> names) {
    return GluedPanel.of(piece, names.stream().map(piece::part).toList()).stream()
        .filter(GluedPanel::isShared)
        .toList();
  }

  /** Parts that stay end to end in one blank, with its length in the rough. */
  private List<Map<String, Object>> longBlanks(List<GluedPanel> together) {
    return together.stream()
        .<Map<String, Object>>map(
            blank ->
                Map.of("marks", phrases.marks(blank.names()), "length", format(blank.length())))
        .toList();
  }

  private boolean isLargePanel(String name) {
    return new Traits(piece).isLargePanel(piece.part(name));
  }

  private boolean isTooWide(String name) {
    return piece.part(name).finishedWidth().isLongerThan(piece.description().shop().planerWidth());
  }

  private String format(Length length) {
    return piece.description().printed().formatWithUnit(length);
  }
}
