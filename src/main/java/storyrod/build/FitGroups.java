package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Which units are put in place in one step: what makes one glue-up, else the first with the one
 * that joins it, equal ones and mirror images ({@link Alike}), and equal sub-assemblies side by
 * side.
 */
final class FitGroups {
  private final GlueUps glueUps;
  private final Map<String, Map<String, Unit>> units = new LinkedHashMap<>();
  private final Alike alike;
  private final Map<String, List<List<Placing>>> byLevel = new LinkedHashMap<>();
  private final LikeLevels likeness;

  FitGroups(List<Placing> placings, Late late, GlueUps glueUps) {
    this.glueUps = glueUps;
    this.alike = new Alike(late, glueUps, units);
    placings.forEach(this::note);
    Map<String, List<Placing>> levels =
        placings.stream()
            .collect(
                Collectors.groupingBy(
                    placing -> placing.unit().level(), LinkedHashMap::new, Collectors.toList()));
    levels.forEach((level, order) -> byLevel.put(level, groups(order)));
    likeness = new LikeLevels(byLevel);
  }

  /** Remembers of which unit of its level a part is. */
  private void note(Placing placing) {
    Map<String, Unit> ofLevel =
        units.computeIfAbsent(placing.unit().level(), level -> new LinkedHashMap<>());
    placing.unit().partNames().forEach(part -> ofLevel.put(part, placing.unit()));
  }

  /** The groups of each level in order. */
  Map<String, List<List<Placing>>> byLevel() {
    return byLevel;
  }

  /** Puts each group before the next, and what is in a group in its order. */
  void chain(List<Task> tasks, BiConsumer<List<Task>, List<Task>> link) {
    Map<String, Task> byName = new LinkedHashMap<>();
    tasks.forEach(task -> byName.put(task.name(), task));
    for (List<List<Placing>> level : byLevel.values()) {
      List<List<Task>> groups = level.stream().map(group -> tasks(byName, group)).toList();
      for (int i = 1; i < groups.size(); i++) {
        link.accept(groups.get(i - 1), groups.get(i));
      }
      groups.forEach(group -> chainEach(group, link));
    }
  }

  /** Keeps the order of a group of which a maker's order takes some into a stage of its own. */
  private static void chainEach(List<Task> group, BiConsumer<List<Task>, List<Task>> link) {
    for (int i = 1; i < group.size(); i++) {
      link.accept(group.subList(i - 1, i), group.subList(i, i + 1));
    }
  }

  private static List<Task> tasks(Map<String, Task> byName, List<Placing> group) {
    return group.stream().map(placing -> byName.get(placing.name())).toList();
  }

  /** What the steps of equal groups in equal sub-assemblies have in common. */
  String batch(Placing placing) {
    String level = placing.unit().level();
    String like = level.equals(Unit.PIECE) ? "" : likeness.first(level);
    return "fit " + like + " " + number(placing);
  }

  /** The number of the group within its level. */
  int number(Placing placing) {
    List<List<Placing>> groups = byLevel.get(placing.unit().level());
    for (int i = 0; i < groups.size(); i++) {
      if (groups.get(i).contains(placing)) {
        return i;
      }
    }
    throw new IllegalStateException("bug: " + placing.name() + " in no group");
  }

  /** The groups of one level in some order. */
  List<List<Placing>> groups(List<Placing> order) {
    List<List<Placing>> groups = new ArrayList<>();
    for (int i = 0; i < order.size(); i += groups.getLast().size()) {
      groups.add(order.subList(i, end(order, i)));
    }
    return groups;
  }

  /** Whether a unit is fitted in one step with those before it. */
  boolean goesWith(Placing placing, List<Placing> group) {
    return alike.goesWith(placing, group);
  }

  private int end(List<Placing> order, int from) {
    int to = from + closedAtOnce(order, from);
    while (to < order.size()) {
      List<Placing> more = order.subList(from, to + closedAtOnce(order, to));
      if (!areAlike(more, to - from)) {
        return to;
      }
      to = from + more.size();
    }
    return to;
  }

  private int closedAtOnce(List<Placing> order, int from) {
    return Math.max(1, glueUps.length(order, from));
  }

  /** Whether those from one on go with those before; whole glue-ups only as twins. */
  private boolean areAlike(List<Placing> all, int from) {
    boolean isGluedUp = closedAtOnce(all, 0) > 1 || closedAtOnce(all, from) > 1;
    return IntStream.range(from, all.size()).allMatch(i -> goesWith(all.get(i), all.subList(0, i)))
        && (!isGluedUp || alike.areTwins(all));
  }
}
