package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Piece;

/** Which parts stand on a narrow edge while a trench is cut into it. */
record NarrowEdges(Piece piece, PartPhrases phrases) {
  /** The parts that stand on their narrow edges for a trench, by these edges. */
  List<Map<String, Object>> of(Step step) {
    Map<List<String>, List<String>> byEdges = new LinkedHashMap<>();
    for (String name : step.targets()) {
      List<String> edges =
          CutData.trenches(step, name)
              .map(Cut.Trench::from)
              .filter(face -> face.axis() == piece.part(name).width())
              .map(Face::word)
              .distinct()
              .toList();
      byEdges.computeIfAbsent(edges, key -> new ArrayList<>()).add(name);
    }
    byEdges.remove(List.<String>of());
    return byEdges.entrySet().stream()
        .<Map<String, Object>>map(
            each -> Map.of("edges", each.getKey(), "parts", phrases.parts(each.getValue())))
        .toList();
  }
}
