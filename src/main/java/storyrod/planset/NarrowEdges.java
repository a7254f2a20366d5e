package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Which parts stand on a narrow edge while a trench is cut into it. */
record NarrowEdges(Piece piece, PartPhrases phrases) {
  /**
   * What stands on narrow edges.
   *
   * @param edges their names
   * @param asDrawn whether they are named as on the part's drawing, for some of its parts are built
   *     in turned
   */
  private record Edges(List<String> edges, boolean asDrawn) {}

  /** The parts that stand on their narrow edges for a trench, by these edges. */
  List<Map<String, Object>> of(Step step) {
    Map<Edges, List<String>> byEdges = new LinkedHashMap<>();
    for (String name : step.targets()) {
      Edges edges = told(step, piece.part(name));
      if (!edges.edges.isEmpty()) {
        byEdges.computeIfAbsent(edges, key -> new ArrayList<>()).add(name);
      }
    }
    return byEdges.entrySet().stream().map(each -> data(each.getKey(), each.getValue())).toList();
  }

  private Map<String, Object> data(Edges edges, List<String> names) {
    return Map.of("edges", edges.edges, "asDrawn", edges.asDrawn, "parts", phrases.parts(names));
  }

  /**
   * Equal parts of one mark are worked alike, whatever their edges are called where they end up.
   */
  private Edges told(Step step, Part part) {
    Part shown = piece.mark(part.mark()).shown();
    boolean isTurned =
        piece.mark(part.mark()).parts().stream()
            .map(piece::part)
            .filter(other -> other.mirrored() == part.mirrored())
            .map(other -> edges(step, other))
            .anyMatch(other -> !other.equals(edges(step, part)));
    List<String> drawn = edges(step, shown);
    return isTurned && shown.mirrored() == part.mirrored() && !drawn.isEmpty()
        ? new Edges(drawn, true)
        : new Edges(edges(step, part), false);
  }

  private static List<String> edges(Step step, Part part) {
    return CutData.trenches(step, part.name())
        .map(Cut.Trench::from)
        .filter(face -> face.axis() == part.width())
        .map(Face::word)
        .distinct()
        .toList();
  }
}
