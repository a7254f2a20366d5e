package storyrod.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import storyrod.words.Words;

/** Which tools do the work of an entry of the table of tools, and what else does, by keys. */
public final class Instruments {
  private final Map<String, List<List<String>>> rows = Figures.read("without.csv");

  /** Of which tools any one is enough; the entry's own key where the table says nothing else. */
  public List<String> anyOf(String tool) {
    return row(tool).map(row -> List.of(row.get(1).split(" "))).orElse(List.of(tool));
  }

  /** The ways in which the work is done without it, where the table knows any. */
  List<String> instead(String tool) {
    return row(tool)
        .map(row -> String.join(",", row.subList(2, row.size())).replaceAll("^\"|\"$", ""))
        .map(ways -> List.of(ways.split(", or ")))
        .orElse(List.of());
  }

  /** The tools that may be missing in a shop, by their names in the plan set. */
  Set<String> names() {
    return Figures.STANDARD.allTools().stream()
        .flatMap(tool -> anyOf(tool).stream())
        .map(Instruments::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  static String name(String tool) {
    String one = "tool.one." + tool;
    return Words.ENGLISH.say(Words.ENGLISH.has(one) ? one : "tool." + tool);
  }

  private Optional<List<String>> row(String tool) {
    return Optional.ofNullable(rows.get(tool)).map(List::getFirst);
  }
}
