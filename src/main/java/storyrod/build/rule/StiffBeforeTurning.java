package storyrod.build.rule;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Need;
import storyrod.build.Placing;
import storyrod.build.WeakUnits;
import storyrod.build.WeakUnits.Weak;
import storyrod.geometry.Face;

/**
 * What hangs on one glued line is not turned over with the piece: a side breaks out of its dado.
 * What makes it firm comes before all that the piece is laid down for.
 */
public final class StiffBeforeTurning implements Rule {
  public static final String KEY = "stiff-before-turning";

  @Override
  public String key() {
    return KEY;
  }

  @Override
  public String reason() {
    return "the piece is turned over only when nothing hangs on one line of glue any more";
  }

  @Override
  public List<Need> needs(Job job) {
    List<Placing> order = job.built();
    List<Need> forced =
        Stream.of(new WayIn(), new PanelBeforeFrameCloses())
            .flatMap(rule -> rule.needs(job).stream())
            .toList();
    return new WeakUnits(job.piece())
        .in(order.stream().map(WeakUnits.Fitted::of).toList()).stream()
            .flatMap(weak -> needs(order, weak))
            .filter(need -> !leads(need.after(), need.before(), forced))
            .distinct()
            .toList();
  }

  private Stream<Need> needs(List<Placing> order, Weak weak) {
    Placing firm = order.get(weak.until());
    List<Placing> waiting = new ArrayList<>();
    order.subList(weak.from() + 1, order.size()).stream()
        .filter(later -> later != firm && (isTurnedFor(later) || joins(later, waiting)))
        .forEach(waiting::add);
    return waiting.stream().map(later -> need(Job.fit(firm), Job.fit(later)));
  }

  /** Whether a unit is joined to one that waits, as a foot is to its cleat. */
  private static boolean joins(Placing later, List<Placing> waiting) {
    return later.closes().stream()
        .flatMap(joint -> Stream.of(joint.first(), joint.second()))
        .anyMatch(
            part -> waiting.stream().anyMatch(each -> each.unit().partNames().contains(part)));
  }

  /** What comes from below, from the front or from behind finds the piece lying down. */
  private static boolean isTurnedFor(Placing placing) {
    return placing.enters().filter(List.of(Face.TOP, Face.BACK, Face.FRONT)::contains).isPresent();
  }

  /** Whether the ways in already put one before another. */
  private static boolean leads(String from, String to, List<Need> forced) {
    Set<String> seen = new TreeSet<>();
    Deque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      String at = open.poll();
      if (at.equals(to)) {
        return true;
      }
      List<String> next = new ArrayList<>();
      forced.stream().filter(need -> need.before().equals(at)).forEach(n -> next.add(n.after()));
      next.stream().filter(seen::add).forEach(open::add);
    }
    return false;
  }
}
