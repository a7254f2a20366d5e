package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Guides;
import storyrod.build.Operation;
import storyrod.build.RowLines;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What fences, stops and guides of a step are set to, and where on these lines its holes lie. */
record FenceData(Piece piece, PartPhrases phrases) {
  /** More figures than these are easier read in a drawing than in a sentence. */
  static final int MOST_ALONG = 4;

  /** Fence settings; parts with the same ones stand together. */
  List<Map<String, Object>> of(Step step) {
    Map<String, Fence> byPart = new LinkedHashMap<>();
    for (Setting setting : step.settings()) {
      if (Guides.isOne(setting)) {
        byPart.computeIfAbsent(setting.part().orElseThrow(), part -> fence(step, part));
      }
    }
    Map<Fence, List<String>> alike = new LinkedHashMap<>();
    byPart.forEach(
        (part, own) ->
            alike.computeIfAbsent(told(part, byPart), fence -> new ArrayList<>()).add(part));
    return alike.entrySet().stream().map(each -> data(each.getKey(), each.getValue())).toList();
  }

  private Map<String, Object> data(Fence fence, List<String> parts) {
    return Map.of(
        "parts",
        phrases.parts(parts),
        "values",
        fence.values,
        "along",
        fence.along,
        "alongDrawn",
        fence.hasRows && fence.along.isEmpty(),
        "asDrawn",
        !fence.drawn.isEmpty());
  }

  private Fence fence(Step step, String name) {
    List<Map<String, Object>> values =
        step.settings().stream()
            .filter(each -> Guides.isOne(each) && name.equals(each.part().orElseThrow()))
            .map(this::distance)
            .toList();
    List<Cut> cuts =
        step.operations().stream()
            .filter(each -> each.target().equals(name))
            .map(Operation::cuts)
            .flatMap(List::stream)
            .toList();
    List<Map<String, Object>> along =
        Guides.along(piece.part(name), cuts).stream().map(this::distance).toList();
    boolean areFew = along.size() <= MOST_ALONG;
    return new Fence(values, areFew ? along : List.of(), !RowLines.of(cuts).isEmpty(), "");
  }

  private Map<String, Object> distance(Setting setting) {
    String edge = setting.key().split("-")[1];
    Part part = piece.part(setting.part().orElseThrow());
    return Map.of(
        "edge", edge,
        "side", side(part, Face.named(edge).orElseThrow()),
        "value", piece.description().printed().toldWithUnit(setting.value()));
  }

  /** Whether what a cut is set out from is an end, an edge or a face of its part. */
  static String side(Part part, Face face) {
    boolean isSquare = part.box().size(part.width()).equals(part.box().size(part.thickness()));
    return isSquare && face.axis() != part.length() ? "face" : SeatData.side(part, face.axis());
  }

  /**
   * What a fence is set to.
   *
   * @param along where on the lines the holes lie; none where they are too many to be told
   * @param hasRows whether there are holes on the lines
   * @param drawn the mark on whose drawing the edges are named, if its parts are turned otherwise
   */
  private record Fence(
      List<Map<String, Object>> values,
      List<Map<String, Object>> along,
      boolean hasRows,
      String drawn) {

    List<String> distances() {
      return Stream.of(values, along)
          .flatMap(all -> all.stream().map(each -> (String) each.get("value")).sorted())
          .toList();
    }

    Fence as(String mark) {
      return new Fence(values, along, hasRows, mark);
    }
  }

  /** Parts of one mark that differ only in the edges' names are told as the one that is drawn. */
  private Fence told(String part, Map<String, Fence> byPart) {
    Mark mark = piece.mark(piece.part(part).mark());
    List<Fence> all =
        mark.parts().stream().filter(byPart::containsKey).map(byPart::get).distinct().toList();
    Fence drawn = byPart.get(mark.shown().name());
    boolean isTurned =
        drawn != null
            && all.size() > 1
            && all.stream().map(Fence::distances).distinct().count() == 1;
    return isTurned ? drawn.as(mark.mark()) : byPart.get(part);
  }
}
