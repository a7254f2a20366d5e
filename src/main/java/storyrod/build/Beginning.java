package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

/**
 * Turns the beginning of an order round where that makes one glue-up of more: if the first unit
 * would lie ready for others that come from the left, and the rest comes from the right, those
 * others lie ready, and it comes to them from the right as well.
 */
final class Beginning {
  private final Reach reach;
  private final GlueUps glueUps;
  private final BiPredicate<Unit, Unit> mayChange;

  /** Two units change places only where the test lets them. */
  Beginning(Reach reach, GlueUps glueUps, BiPredicate<Unit, Unit> mayChange) {
    this.reach = reach;
    this.glueUps = glueUps;
    this.mayChange = mayChange;
  }

  List<Placing> of(List<Placing> order) {
    int same = comingAlike(order);
    if (same == 0 || same + 1 >= order.size()) {
      return order;
    }
    Face way = order.get(1).enters().orElseThrow();
    List<Placing> lying = order.subList(1, same + 1);
    boolean helps = order.get(same + 1).enters().filter(way.opposite()::equals).isPresent();
    if (!helps || !canLie(lying, order.getFirst(), way)) {
      return order;
    }
    List<Placing> turned = turned(order, lying, way);
    return glueUps.length(turned, 0) > lying.size() + 1 ? turned : order;
  }

  /** How many come the same way to the first one alone, from the second on. */
  private static int comingAlike(List<Placing> order) {
    return (int)
        IntStream.range(1, order.size())
            .takeWhile(i -> order.get(i).enters().equals(order.get(1).enters()))
            .takeWhile(i -> isTo(order.get(i), order.getFirst().unit()))
            .count();
  }

  private static boolean isTo(Placing placing, Unit first) {
    return placing.isStraight()
        && !placing.closes().isEmpty()
        && placing.closes().stream().allMatch(j -> first.has(j.first()) || first.has(j.second()));
  }

  private boolean canLie(List<Placing> lying, Placing first, Face way) {
    List<Unit> units = lying.stream().map(Placing::unit).toList();
    return units.stream().allMatch(unit -> mayChange.test(first.unit(), unit))
        && reach.ways(first.unit(), units).contains(way)
        && IntStream.range(1, units.size())
            .allMatch(i -> reach.ways(units.get(i), units.subList(0, i)).contains(way));
  }

  /**
   * A single one that lies ready instead keeps its place in the list, which a maker may have set.
   */
  private static List<Placing> turned(List<Placing> order, List<Placing> lying, Face way) {
    Optional<Face> from = Optional.of(way.opposite());
    List<Placing> turned = new ArrayList<>();
    List<String> standing = new ArrayList<>();
    for (Placing each : lying) {
      Optional<Face> enters = turned.isEmpty() ? Optional.empty() : from;
      turned.add(new Placing(each.unit(), enters, Optional.empty(), List.of(), standing, false));
      standing.addAll(each.unit().partNames());
    }
    List<Joint> closes = lying.stream().flatMap(each -> each.closes().stream()).toList();
    Placing coming =
        new Placing(order.getFirst().unit(), from, Optional.empty(), closes, standing, false);
    turned.add(lying.size() == 1 ? 0 : lying.size(), coming);
    turned.addAll(order.subList(lying.size() + 1, order.size()));
    return turned;
  }
}
