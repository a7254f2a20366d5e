package storyrod.planset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.ShowFaces;
import storyrod.build.Traits;
import storyrod.description.OnHandEntry;
import storyrod.description.StockEntry;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.GrainMatch;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;

/** The values of a step that chooses boards and sheets: which parts want which wood first. */
record ChoiceData(Piece piece, PartPhrases phrases) {
  /** So many of the longest parts are named, with all that are as long as the last of them. */
  private static final int LONGEST = 3;

  Map<String, Object> of(Step step) {
    List<Part> parts = step.targets().stream().map(piece::part).toList();
    Map<StockEntry, List<Part>> byStock = new LinkedHashMap<>();
    parts.forEach(part -> byStock.computeIfAbsent(part.stock(), s -> new ArrayList<>()).add(part));
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("stocks", byStock.entrySet().stream().map(e -> of(e.getKey(), e.getValue())).toList());
    data.put("matches", matches(step.targets()));
    data.put("seen", phrases.marks(parts.stream().filter(this::isSeen).map(Part::name).toList()));
    return data;
  }

  private Map<String, Object> of(StockEntry stock, List<Part> parts) {
    List<OnHandEntry> there =
        piece.description().onHand().stream()
            .filter(each -> each.stock().value().equals(stock.name()))
            .toList();
    boolean isLaidOut =
        !there.isEmpty() || stock.sheet().or(() -> stock.figures().board()).isPresent();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("material", Texts.of(piece).wood(stock));
    data.put("thick", format(thickness(stock, parts)));
    data.put("quarter", stock.figures().quarterSawn());
    data.put("bought", stock.boughtAs().map(this::bought).orElse(""));
    data.put("layers", parts.stream().allMatch(piece::isLaminated));
    data.put("sheet", Traits.isSheet(parts.getFirst()));
    data.put("laidOut", isLaidOut);
    data.put(
        "onHand", there.stream().map(each -> Texts.of(piece).words().name(each.name())).toList());
    data.put("flawed", there.stream().anyMatch(each -> !each.defects().isEmpty()));
    data.put("marks", phrases.marks(parts.stream().map(Part::name).toList()));
    List<GluedPanel> longest = longest(parts);
    data.put("longest", byLength(longest));
    data.put(
        "others",
        marks(longest.stream().flatMap(each -> each.parts().stream())) < marks(parts.stream()));
    return data;
  }

  /** As thick as the parts, or as bought where all of them are glued up from such boards. */
  private Length thickness(StockEntry stock, List<Part> parts) {
    Length thickness = parts.getFirst().finishedThickness();
    return parts.stream().allMatch(piece::isLaminated)
        ? stock.boughtAs().orElse(thickness)
        : thickness;
  }

  /** What needs the longest boards: one of each mark, or what stays end to end in one blank. */
  private List<GluedPanel> longest(List<Part> parts) {
    Map<Object, GluedPanel> byMark = new LinkedHashMap<>();
    GluedPanel.of(piece, parts).stream()
        .sorted(Comparator.comparing(GluedPanel::length).reversed())
        .forEach(each -> byMark.putIfAbsent(each.isShared() ? each : each.first().mark(), each));
    List<GluedPanel> all = List.copyOf(byMark.values());
    Length least = all.get(Math.min(LONGEST, all.size()) - 1).length();
    return all.stream().filter(each -> !each.length().isShorterThan(least)).toList();
  }

  /** Those of one length together. */
  private List<Map<String, Object>> byLength(List<GluedPanel> longest) {
    Map<String, List<GluedPanel>> lengths = new LinkedHashMap<>();
    longest.forEach(
        each -> lengths.computeIfAbsent(format(each.length()), key -> new ArrayList<>()).add(each));
    return lengths.entrySet().stream()
        .<Map<String, Object>>map(
            each ->
                Map.of(
                    "length",
                    each.getKey(),
                    "blanks",
                    each.getValue().stream().map(this::rough).toList()))
        .toList();
  }

  private Map<String, Object> rough(GluedPanel blank) {
    return Map.of(
        "mark", blank.first().mark(),
        "marks", phrases.marks(blank.names()),
        "together", blank.isShared());
  }

  private static long marks(Stream<Part> parts) {
    return parts.map(Part::mark).distinct().count();
  }

  private List<Map<String, Object>> matches(List<String> targets) {
    return GrainMatch.of(piece).stream()
        .filter(match -> match.parts().stream().anyMatch(part -> targets.contains(part.name())))
        .<Map<String, Object>>map(
            match ->
                Map.of(
                    "parts", phrases.parts(match.parts().stream().map(Part::name).toList()),
                    "inRow", match.row().isPresent(),
                    "endToEnd", match.endToEnd(),
                    "sheet", Traits.isSheet(match.parts().getFirst())))
        .toList();
  }

  /** Whether it is solid wood that looks to the front or up. */
  private boolean isSeen(Part part) {
    Optional<Face> shown = new ShowFaces(piece).of(part);
    return !Traits.isSheet(part)
        && shown.filter(List.of(Face.FRONT, Face.TOP)::contains).isPresent();
  }

  private String bought(Length rough) {
    return Shopping.boughtAs(rough, piece.description().printed());
  }

  private String format(Length length) {
    return piece.description().printed().formatWithUnit(length);
  }
}
