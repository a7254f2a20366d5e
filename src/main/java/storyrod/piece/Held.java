package storyrod.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import storyrod.geometry.Axis;
import storyrod.measure.Length;

/** Which units of one level hang together by joints, and which by none. */
final class Held {
  private final Nesting nesting;
  private final List<Set<String>> groups = new ArrayList<>();
  private final Map<String, Set<String>> groupOf = new LinkedHashMap<>();
  private final Set<String> heldOutside = new LinkedHashSet<>();

  /** What holds the units of a level, by the joints that {@link #joining} gives. */
  Held(Nesting nesting, List<Joint> joints, String level) {
    this.nesting = nesting;
    Map<String, String> unitOf = new LinkedHashMap<>();
    for (String unit : nesting.units().get(level)) {
      groupOf.put(unit, new LinkedHashSet<>(Set.of(unit)));
      groups.add(groupOf.get(unit));
      nesting.parts(unit).forEach(part -> unitOf.put(part.name(), unit));
    }
    for (Joint joint : joints) {
      join(
          Optional.ofNullable(unitOf.get(joint.first())),
          Optional.ofNullable(unitOf.get(joint.second())));
    }
  }

  /** The joints but for those of parts that only run in grooves. */
  static List<Joint> joining(List<Joint> joints) {
    Set<String> sliding = sliding(joints);
    return joints.stream().filter(joint -> !sliding.contains(joint.first())).toList();
  }

  /** The parts that only run in grooves, such as the lid of a box. */
  private static Set<String> sliding(List<Joint> joints) {
    Set<String> sliding = new LinkedHashSet<>();
    joints.stream().filter(Joint::slides).forEach(joint -> sliding.add(joint.first()));
    joints.stream()
        .filter(Joint::holding)
        .forEach(joint -> sliding.removeAll(List.of(joint.first(), joint.second())));
    return sliding;
  }

  private void join(Optional<String> one, Optional<String> two) {
    if (one.isPresent() && two.isPresent()) {
      Set<String> first = groupOf.get(one.get());
      Set<String> second = groupOf.get(two.get());
      if (first != second) {
        first.addAll(second);
        second.forEach(unit -> groupOf.put(unit, first));
        groups.removeIf(group -> group == second);
      }
    } else {
      one.or(() -> two).ifPresent(heldOutside::add);
    }
  }

  /** Units that nothing holds, without the largest group, round which the others are built. */
  List<String> loose() {
    Optional<Set<String>> body = body();
    return groups.stream()
        .filter(group -> group.size() == 1 && body.filter(group::equals).isEmpty())
        .flatMap(Set::stream)
        .filter(unit -> !heldOutside.contains(unit))
        .toList();
  }

  private Optional<Set<String>> body() {
    Optional<Set<String>> largest = Optional.empty();
    double most = -1;
    for (Set<String> group : groups) {
      double room = roomMm3(group);
      if (room > most) {
        most = room;
        largest = Optional.of(group);
      }
    }
    return largest;
  }

  /** The volume of the box around a group, in mm³. */
  private double roomMm3(Set<String> group) {
    List<Part> parts = group.stream().flatMap(unit -> nesting.parts(unit).stream()).toList();
    double volume = 1;
    for (Axis axis : Axis.values()) {
      Length from = parts.stream().map(p -> p.box().on(axis).from()).reduce(Length::min).get();
      Length to = parts.stream().map(p -> p.box().on(axis).to()).reduce(Length::max).get();
      volume *= to.minus(from).toMm();
    }
    return volume;
  }
}
