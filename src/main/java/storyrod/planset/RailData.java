package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Piece;

/** How the fasteners of a top are shared out among its rails, and what of each they sit in. */
record RailData(Piece piece, PartPhrases phrases) {
  /** Rails that take equally many in the same kind of cut are told together. */
  private record Share(int each, String mark, String term) {}

  List<Map<String, Object>> of(List<Joint> joints, String item) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Map<String, String> terms = new LinkedHashMap<>();
    for (Joint joint : joints) {
      Stream.of(joint.first(), joint.second())
          .forEach(
              part ->
                  cutFor(joint, part)
                      .forEach(
                          cut -> {
                            terms.put(part, cut.term());
                            counts.merge(part, count(joint, item), Integer::sum);
                          }));
    }
    return shares(counts, terms);
  }

  private Stream<Cut> cutFor(Joint joint, String part) {
    return piece.part(part).cuts().stream().filter(cut -> cut.at().equals(joint.at())).limit(1);
  }

  private static int count(Joint joint, String item) {
    return joint.fasteners().stream()
        .filter(each -> each.item().equals(item))
        .mapToInt(ItemCount::count)
        .sum();
  }

  private List<Map<String, Object>> shares(Map<String, Integer> counts, Map<String, String> terms) {
    Map<Share, List<String>> alike = new LinkedHashMap<>();
    counts.forEach(
        (part, each) ->
            alike
                .computeIfAbsent(
                    new Share(each, piece.part(part).mark(), terms.get(part)),
                    key -> new ArrayList<>())
                .add(part));
    return alike.entrySet().stream()
        .map(
            entry ->
                Map.<String, Object>of(
                    "each", entry.getKey().each(),
                    "term", entry.getKey().term(),
                    "parts", phrases.parts(entry.getValue())))
        .toList();
  }
}
