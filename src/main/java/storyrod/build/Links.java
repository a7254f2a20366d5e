package storyrod.build;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import storyrod.piece.Joint;

/** Which units of a level are joined by which joints, looked up once. */
final class Links {
  /** A joint between two units, by their numbers. */
  private record Link(Joint joint, int from, int to) {}

  private final Map<String, Integer> number = new LinkedHashMap<>();
  private final List<Link> links;

  Links(List<Unit> units, List<Joint> joints) {
    Map<String, Integer> unitOf = new LinkedHashMap<>();
    for (Unit unit : units) {
      int place = number.size();
      number.put(unit.name(), place);
      unit.parts().forEach(part -> unitOf.put(part.name(), place));
    }
    links =
        joints.stream()
            .filter(each -> unitOf.containsKey(each.first()) && unitOf.containsKey(each.second()))
            .map(each -> new Link(each, unitOf.get(each.first()), unitOf.get(each.second())))
            .filter(link -> link.from() != link.to())
            .toList();
  }

  /** The joints between a unit and others. */
  List<Joint> closed(Unit unit, List<Unit> others) {
    BitSet there = numbers(others);
    int own = number.get(unit.name());
    return links.stream()
        .filter(
            link ->
                link.from() == own && there.get(link.to())
                    || link.to() == own && there.get(link.from()))
        .map(Link::joint)
        .toList();
  }

  /** Whether all units hang together by their joints; none may be missing from the level. */
  boolean isConnected(List<Unit> units) {
    BitSet open = numbers(units);
    int[] heads = IntStream.range(0, number.size()).toArray();
    int apart = units.size();
    for (Link link : links) {
      int one = head(heads, link.from());
      int two = head(heads, link.to());
      if (one != two && open.get(link.from()) && open.get(link.to())) {
        heads[one] = two;
        apart--;
      }
    }
    return apart == 1;
  }

  /** What stands for all units that hang together with one. */
  private static int head(int[] heads, int unit) {
    int at = unit;
    while (heads[at] != at) {
      heads[at] = heads[heads[at]];
      at = heads[at];
    }
    return at;
  }

  private BitSet numbers(List<Unit> units) {
    BitSet numbers = new BitSet();
    units.forEach(unit -> numbers.set(number.get(unit.name())));
    return numbers;
  }
}
