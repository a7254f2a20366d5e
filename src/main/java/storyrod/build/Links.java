package storyrod.build;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.piece.Joint;

/** Which units of a level are joined by which joints, looked up once. */
final class Links {
  private record Link(Joint joint, String one, String two) {}

  private final Map<String, Integer> number = new LinkedHashMap<>();
  private final List<Link> links;

  Links(List<Unit> units, List<Joint> joints) {
    Map<String, String> unitOf = new LinkedHashMap<>();
    for (Unit unit : units) {
      number.put(unit.name(), number.size());
      unit.parts().forEach(part -> unitOf.put(part.name(), unit.name()));
    }
    links =
        joints.stream()
            .filter(each -> unitOf.containsKey(each.first()) && unitOf.containsKey(each.second()))
            .map(each -> new Link(each, unitOf.get(each.first()), unitOf.get(each.second())))
            .filter(link -> !link.one().equals(link.two()))
            .toList();
  }

  /** The joints between a unit and others. */
  List<Joint> closed(Unit unit, List<Unit> others) {
    BitSet there = numbers(others);
    return links.stream()
        .filter(
            link ->
                link.one().equals(unit.name()) && there.get(number.get(link.two()))
                    || link.two().equals(unit.name()) && there.get(number.get(link.one())))
        .map(Link::joint)
        .toList();
  }

  /** Whether all units hang together by their joints; none may be missing from the level. */
  boolean isConnected(List<Unit> units) {
    BitSet open = numbers(units);
    BitSet reached = new BitSet();
    reached.set(open.nextSetBit(0));
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Link link : links) {
        grows |= spreads(reached, open, number.get(link.one()), number.get(link.two()));
      }
    }
    return reached.equals(open);
  }

  private static boolean spreads(BitSet reached, BitSet open, int one, int two) {
    if (!open.get(one) || !open.get(two) || reached.get(one) == reached.get(two)) {
      return false;
    }
    reached.set(one);
    reached.set(two);
    return true;
  }

  private BitSet numbers(List<Unit> units) {
    BitSet numbers = new BitSet();
    units.forEach(unit -> numbers.set(number.get(unit.name())));
    return numbers;
  }
}
