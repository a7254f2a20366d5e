package storyrod.build;

import java.util.ArrayList;
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

  /** The links of each unit, by its number. */
  private final List<List<Link>> ofUnit = new ArrayList<>();

  Links(List<Unit> units, List<Joint> joints) {
    Map<String, Integer> unitOf = new LinkedHashMap<>();
    for (Unit unit : units) {
      int place = number.size();
      number.put(unit.name(), place);
      ofUnit.add(new ArrayList<>());
      unit.parts().forEach(part -> unitOf.put(part.name(), place));
    }
    links =
        joints.stream()
            .filter(each -> unitOf.containsKey(each.first()) && unitOf.containsKey(each.second()))
            .map(each -> new Link(each, unitOf.get(each.first()), unitOf.get(each.second())))
            .filter(link -> link.from() != link.to())
            .toList();
    links.forEach(this::enter);
  }

  private void enter(Link link) {
    ofUnit.get(link.from()).add(link);
    ofUnit.get(link.to()).add(link);
  }

  /** Some units of the level, of which one after the other may go. */
  Some some(List<Unit> units) {
    return new Some(numbers(units));
  }

  /** Units of the level. */
  final class Some {
    private final BitSet units;

    private Some(BitSet units) {
      this.units = units;
    }

    void remove(Unit unit) {
      units.clear(number.get(unit.name()));
    }

    /** The joints between a unit and these. */
    List<Joint> closed(Unit unit) {
      int own = number.get(unit.name());
      return ofUnit.get(own).stream()
          .filter(link -> units.get(link.from() == own ? link.to() : link.from()))
          .map(Link::joint)
          .toList();
    }

    /** Whether they fall apart when one of them is left out. */
    boolean isSplitWithout(Unit unit) {
      BitSet left = (BitSet) units.clone();
      left.clear(number.get(unit.name()));
      return !left.isEmpty() && !isConnected(left);
    }
  }

  /** Whether all units hang together by their joints; none may be missing from the level. */
  boolean isConnected(List<Unit> units) {
    return isConnected(numbers(units));
  }

  private boolean isConnected(BitSet open) {
    int[] heads = IntStream.range(0, number.size()).toArray();
    int apart = open.cardinality();
    for (Link link : links) {
      if (open.get(link.from()) && open.get(link.to())) {
        int one = head(heads, link.from());
        int two = head(heads, link.to());
        heads[one] = two;
        apart -= one == two ? 0 : 1;
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
