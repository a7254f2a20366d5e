package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.build.BuildPlan.Step;
import storyrod.build.CutKind;
import storyrod.build.Verb;
import storyrod.drawing.FullSize;
import storyrod.piece.Piece;

/** Which full-size templates save the laying out of a step. */
record TemplateData(Piece piece, List<FullSize> templates) {
  /** The full-size templates that serve a step, by mark: outlines to saw, holes to bore. */
  List<Map<String, Object>> of(Step step, CutKind kind) {
    List<String> marks = step.targets().stream().map(name -> piece.part(name).mark()).toList();
    boolean drills = kind.verb() == Verb.DRILL;
    Map<String, List<String>> names = new LinkedHashMap<>();
    templates.stream()
        .filter(each -> marks.contains(each.mark().mark()))
        .filter(each -> drills ? !each.holes().isEmpty() : !each.cuts().isEmpty())
        .forEach(
            each ->
                names
                    .computeIfAbsent(each.mark().mark(), mark -> new ArrayList<>())
                    .add(each.name()));
    return names.entrySet().stream()
        .<Map<String, Object>>map(each -> Map.of("mark", each.getKey(), "names", each.getValue()))
        .toList();
  }
}
