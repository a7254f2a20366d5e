package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import storyrod.build.WeakUnits.Fitted;
import storyrod.piece.Joint;

/**
 * What holds something while more is fitted: its first joints, and those to what is tied to the
 * same body in another way than through itself. What only hangs on it makes nothing firm.
 */
final class Ties {
  private final List<Fitted> order;
  private final Fitted held;
  private final List<Joint> holding;
  private final List<Joint> hanging = new ArrayList<>();
  private final Set<String> first = new LinkedHashSet<>();

  /** Starts with the joints that hold it first. */
  Ties(List<Fitted> order, Fitted held, List<Joint> holding) {
    this.order = order;
    this.held = held;
    this.holding = new ArrayList<>(holding);
    holding.forEach(joint -> first.add(other(joint)));
  }

  /** The joints that hold it by now. */
  List<Joint> holding() {
    return holding;
  }

  /** Fits the next unit of the order, by its place; whether more joints hold than before. */
  boolean add(Fitted next, int place) {
    hanging.addAll(WeakUnits.touching(next, held));
    if (hanging.isEmpty()) {
      return false;
    }
    Set<String> tied = tied(order.subList(0, place + 1));
    List<Joint> more = hanging.stream().filter(joint -> tied.contains(other(joint))).toList();
    holding.addAll(more);
    hanging.removeAll(more);
    return !more.isEmpty();
  }

  private String other(Joint joint) {
    return held.parts().contains(joint.first()) ? joint.second() : joint.first();
  }

  /** All that hangs together with what held it first, when it is thought away. */
  private Set<String> tied(List<Fitted> there) {
    Set<String> tied = new LinkedHashSet<>(first);
    int before = 0;
    while (before < tied.size()) {
      before = tied.size();
      there.stream().filter(each -> each != held).forEach(each -> grow(each, tied));
    }
    return tied;
  }

  private void grow(Fitted unit, Set<String> tied) {
    if (unit.parts().stream().anyMatch(tied::contains)) {
      tied.addAll(unit.parts());
    }
    unit.closes().stream()
        .map(joint -> List.of(joint.first(), joint.second()))
        .filter(ends -> ends.stream().noneMatch(held.parts()::contains))
        .filter(ends -> ends.stream().anyMatch(tied::contains))
        .forEach(tied::addAll);
  }
}
