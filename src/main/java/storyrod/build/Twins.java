package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Brings equal units of a level and mirror images together, so that they are fitted in one step:
 * each is moved to the front, past what need not come before it, where that makes fewer steps.
 */
final class Twins {
  private final StepOrder order;
  private final FitGroups grouping;

  Twins(StepOrder order, FitGroups grouping) {
    this.order = order;
    this.grouping = grouping;
  }

  /** The orders of all levels with twins together; the function tells what keeps its order. */
  static Map<String, Assembler.Order> together(
      Map<String, Assembler.Order> orders,
      FitGroups grouping,
      Function<List<List<Placing>>, StepOrder> kept) {
    Map<String, Assembler.Order> twinned = new LinkedHashMap<>(orders);
    twinned.replaceAll(
        (level, order) -> {
          StepOrder groups = kept.apply(grouping.groups(order.placings()));
          return order.with(new Twins(groups, grouping).together(order.placings()));
        });
    return twinned;
  }

  /** The placings of a level with twins together. */
  private List<Placing> together(List<Placing> placings) {
    List<List<Placing>> groups = grouping.groups(placings);
    return IntStream.range(1, groups.size())
        .boxed()
        .flatMap(at -> moved(groups, at).stream())
        .filter(better -> grouping.groups(better).size() < groups.size())
        .findFirst()
        .map(this::together)
        .orElse(placings);
  }

  /** The order with a whole later group moved up to its twins, if there is one that may be. */
  private Optional<List<Placing>> moved(List<List<Placing>> groups, int at) {
    List<Placing> first = groups.get(at);
    return IntStream.range(at + 2, groups.size())
        .filter(later -> goesWith(groups.get(later), first))
        .filter(later -> order.mayPass(groups.subList(at + 1, later), groups.get(later)))
        .mapToObj(later -> order.standing(withMoved(groups, at, later)))
        .findFirst();
  }

  private boolean goesWith(List<Placing> later, List<Placing> first) {
    List<Placing> group = new ArrayList<>(first);
    for (Placing each : later) {
      if (!grouping.goesWith(each, group)) {
        return false;
      }
      group.add(each);
    }
    return true;
  }

  private static List<Placing> withMoved(List<List<Placing>> groups, int at, int later) {
    return Stream.of(
            groups.subList(0, at + 1),
            List.of(groups.get(later)),
            groups.subList(at + 1, later),
            groups.subList(later + 1, groups.size()))
        .flatMap(List::stream)
        .flatMap(List::stream)
        .toList();
  }
}
