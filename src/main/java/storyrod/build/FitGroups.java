package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import storyrod.piece.Joint;

/**
 * Which units are put in place in one step: what makes one glue-up, else the first with the one
 * that joins it, equal ones that come the same way into the same parts, and equal sub-assemblies
 * side by side.
 */
final class FitGroups {
  private static final int MOST = 4;
  private final Late late;
  private final GlueUps glueUps;
  private final Map<String, Map<String, String>> units = new LinkedHashMap<>();
  private final Map<String, List<List<Placing>>> byLevel = new LinkedHashMap<>();
  private final LikeLevels likeness;

  FitGroups(List<Placing> placings, Late late, GlueUps glueUps) {
    this.late = late;
    this.glueUps = glueUps;
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
    Map<String, String> ofLevel =
        units.computeIfAbsent(placing.unit().level(), level -> new LinkedHashMap<>());
    placing.unit().partNames().forEach(part -> ofLevel.put(part, placing.unit().name()));
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

  private List<List<Placing>> groups(List<Placing> order) {
    List<List<Placing>> groups = new ArrayList<>();
    for (int i = 0; i < order.size(); i += groups.getLast().size()) {
      int gluedUp = glueUps.length(order, i);
      groups.add(gluedUp > 1 ? order.subList(i, i + gluedUp) : alike(order, i));
    }
    return groups;
  }

  private List<Placing> alike(List<Placing> order, int from) {
    int to = from + 1;
    while (to < order.size()
        && goesWith(order.get(to), order.subList(from, to))
        && glueUps.length(order, to) < 2) {
      to++;
    }
    return order.subList(from, to);
  }

  /** The units that a unit is joined to. */
  private List<String> into(Placing placing) {
    return placing.closes().stream()
        .map(joint -> other(joint, placing))
        .map(part -> units.get(placing.unit().level()).getOrDefault(part, part))
        .distinct()
        .sorted()
        .toList();
  }

  private boolean goesWith(Placing placing, List<Placing> group) {
    Placing last = group.getLast();
    if (last.enters().isEmpty()) {
      return true;
    }
    return group.size() < MOST
        && (last.unit().marks().equals(placing.unit().marks()) || areLate(last, placing))
        && last.enters().equals(placing.enters())
        && last.tilted() == placing.tilted()
        && last.firstMove().equals(placing.firstMove())
        && (into(last).equals(into(placing)) || areFronts(last, placing));
  }

  /** Whether both are drawers, or their fronts, from one text, of whatever height. */
  private boolean areLate(Placing one, Placing other) {
    return (late.isLoose(one.unit()) && late.isLoose(other.unit()) || areFronts(one, other))
        && shape(one.unit()).equals(shape(other.unit()));
  }

  /** The names of its parts inside it, with what they are made of. */
  private static List<String> shape(Unit unit) {
    return unit.parts().stream()
        .map(
            part ->
                part.name()
                        .substring(Math.min(unit.name().length(), part.name().lastIndexOf('.') + 1))
                    + " "
                    + part.stock().name())
        .toList();
  }

  /** Whether both are equal fronts of equal drawers, which are fixed alike. */
  private boolean areFronts(Placing one, Placing other) {
    return late.isFront(one.unit()) && late.isFront(other.unit());
  }

  private static String other(Joint joint, Placing placing) {
    return placing.unit().has(joint.first()) ? joint.second() : joint.first();
  }
}
