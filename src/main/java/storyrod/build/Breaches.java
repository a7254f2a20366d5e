package storyrod.build;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.rule.Rules;
import storyrod.description.Diagnostic;

/** Where a maker's orders put a step before one that it has to wait for. */
final class Breaches {
  private final OwnEntries entries;
  private final Map<String, List<Need>> byAfter;

  Breaches(OwnEntries entries, List<Need> needs) {
    this.entries = entries;
    this.byAfter =
        needs.stream()
            .collect(Collectors.groupingBy(Need::after, LinkedHashMap::new, Collectors.toList()));
  }

  /** The rule's reason and its name, as the end of a message. */
  static String why(String rule) {
    return Rules.named(rule).reason() + " (rule " + rule + ")";
  }

  List<Diagnostic> found() {
    return entries.sequences().stream()
        .flatMap(order -> order.stream().flatMap(name -> breaches(name, order)))
        .toList();
  }

  private Stream<Diagnostic> breaches(String early, List<String> order) {
    return paths(early, order).stream().map(path -> breach(early, path));
  }

  /** The paths of needs from later entries to an earlier one, over operations not in the order. */
  private List<List<Need>> paths(String early, List<String> order) {
    List<List<Need>> found = new ArrayList<>();
    Map<String, Boolean> seen = new LinkedHashMap<>();
    Deque<List<Need>> open = new ArrayDeque<>();
    byAfter.getOrDefault(early, List.of()).forEach(need -> open.add(List.of(need)));
    while (!open.isEmpty()) {
      List<Need> path = open.poll();
      String before = path.getLast().before();
      if (seen.put(before, true) != null) {
        continue;
      }
      if (!order.contains(before)) {
        byAfter.getOrDefault(before, List.of()).forEach(need -> open.add(plus(path, need)));
      } else if (order.indexOf(before) > order.indexOf(early)) {
        found.add(path);
      }
    }
    return found;
  }

  private Diagnostic breach(String early, List<Need> path) {
    String late = path.getLast().before();
    String why =
        path.size() == 1
            ? why(path.getFirst().rule())
            : path.stream().map(Breaches::waits).collect(Collectors.joining(", and "));
    return Diagnostic.error(
            OwnOrder.CODE,
            entries.entry(early).at(),
            "`" + early + "` comes before `" + late + "`, but " + why)
        .also(entries.entry(late).at(), "`" + late + "` has to come first")
        .hint("move `" + late + "` up, before `" + early + "`");
  }

  private static String waits(Need need) {
    return "`" + need.after() + "` has to wait for `" + need.before() + "`: " + why(need.rule());
  }

  private static List<Need> plus(List<Need> path, Need last) {
    List<Need> longer = new ArrayList<>(path);
    longer.add(last);
    return List.copyOf(longer);
  }
}
