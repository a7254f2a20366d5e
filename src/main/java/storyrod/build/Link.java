package storyrod.build;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One task before another, by their places in a list.
 *
 * @param cause the rule that asks for it, {@link #OWN} or {@link #GEOMETRY}
 */
record Link(int earlier, int later, String cause) {
  /** The maker's own order asks for it. */
  static final String OWN = "own-order";

  /** The order in which parts find their way in asks for it. */
  static final String GEOMETRY = "order-of-fitting";

  /**
   * The fewest links that lead from a task back to itself, each to where the next starts; none if
   * there is no circle. The search runs breadth first from each task in turn, so the first circle
   * of the smallest length is found.
   */
  static List<Link> shortestCircle(List<Link> links) {
    Map<Integer, List<Link>> from =
        links.stream()
            .collect(Collectors.groupingBy(Link::earlier, LinkedHashMap::new, Collectors.toList()));
    List<Link> shortest = List.of();
    for (int start : from.keySet()) {
      List<Link> circle = circle(start, from);
      boolean isShorter = shortest.isEmpty() || circle.size() < shortest.size();
      if (!circle.isEmpty() && isShorter) {
        shortest = circle;
      }
    }
    return shortest;
  }

  private static List<Link> circle(int start, Map<Integer, List<Link>> from) {
    Map<Integer, Link> reachedBy = new LinkedHashMap<>();
    Deque<Integer> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty() && !reachedBy.containsKey(start)) {
      for (Link link : from.getOrDefault(open.poll(), List.of())) {
        if (reachedBy.putIfAbsent(link.later(), link) == null) {
          open.add(link.later());
        }
      }
    }
    return reachedBy.containsKey(start) ? back(start, reachedBy) : List.of();
  }

  private static List<Link> back(int start, Map<Integer, Link> reachedBy) {
    List<Link> circle = new ArrayList<>();
    int at = start;
    do {
      circle.add(reachedBy.get(at));
      at = circle.getLast().earlier();
    } while (at != start);
    Collections.reverse(circle);
    return List.copyOf(circle);
  }
}
