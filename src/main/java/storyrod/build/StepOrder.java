package storyrod.build;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Need;
import storyrod.build.rule.Job;
import storyrod.build.rule.Rules;
import storyrod.geometry.Face;

/**
 * Which steps that fit units to the piece or a sub-assembly keep their order: what begins the
 * piece, what is joined, what would stand in the other's way or in the line of its screws, what a
 * rule or the maker puts in order, and what waits for the finish. So every joint is closed by the
 * same unit as before, and whatever stood firm by then still does.
 */
final class StepOrder {
  private final Job job;
  private final List<List<Placing>> groups;
  private final BiPredicate<Unit, Unit> isGiven;
  private final Lying lying;

  /**
   * The order of groups.
   *
   * @param groups the units of each step, in an order that works
   * @param isGiven whether the maker puts two units in order
   */
  StepOrder(Job job, List<List<Placing>> groups, BiPredicate<Unit, Unit> isGiven) {
    this.job = job;
    this.groups = groups;
    this.isGiven = isGiven;
    this.lying = new Lying(job.late());
  }

  private static List<String> fits(Need need) {
    return List.of(need.before(), need.after());
  }

  /** The placings in the order with the fewest turns. */
  List<Placing> fewestTurns() {
    List<Optional<Face>> lies = groups.stream().map(this::lies).toList();
    if (FewTurns.isLeast(lies)) {
      return groups.stream().flatMap(List::stream).toList();
    }
    return standing(
        new FewTurns(lies, before())
            .order().stream().flatMap(step -> groups.get(step).stream()).toList());
  }

  private List<BitSet> before() {
    Set<List<String>> needs = needs();
    List<BitSet> before = new ArrayList<>();
    for (int later = 0; later < groups.size(); later++) {
      BitSet kept = new BitSet();
      for (int earlier = 0; earlier < later; earlier++) {
        kept.set(earlier, earlier == 0 || isKept(groups.get(earlier), groups.get(later), needs));
      }
      before.add(kept);
    }
    return before;
  }

  private Optional<Face> lies(List<Placing> group) {
    return group.stream().flatMap(placing -> lying.needed(placing).stream()).findFirst();
  }

  /** Whether a step may be done before others that stand before it in the given order. */
  boolean mayPass(List<List<Placing>> passed, List<Placing> later) {
    Set<List<String>> needs = needs();
    return passed.stream().noneMatch(earlier -> isKept(earlier, later, needs));
  }

  private Set<List<String>> needs() {
    return Rules.needs(job).stream().map(StepOrder::fits).collect(Collectors.toUnmodifiableSet());
  }

  /** The placings in another order, each after what stands by then. */
  List<Placing> standing(List<Placing> order) {
    List<Placing> placed = new ArrayList<>();
    List<String> standing = new ArrayList<>();
    for (Placing each : order) {
      placed.add(groups.getFirst().contains(each) ? each : each.after(standing));
      standing.addAll(each.unit().partNames());
    }
    return placed;
  }

  private boolean isKept(List<Placing> earlier, List<Placing> later, Set<List<String>> needs) {
    return earlier.stream()
        .anyMatch(
            one ->
                later.stream()
                    .anyMatch(
                        two ->
                            isKept(one, two) || needs.contains(List.of(one.name(), two.name()))));
  }

  private boolean isKept(Placing one, Placing two) {
    return one.tilted()
        || job.isLate(one.unit())
        || job.isLate(two.unit())
        || isJoined(one, two)
        || isGiven.test(one.unit(), two.unit())
        || one.enters().isPresent() && job.reach().blocks(two.unit(), one)
        || Leaving.drivingCost(job.reach(), one.closes(), List.of(two.unit())) > 0;
  }

  private static boolean isJoined(Placing one, Placing two) {
    return two.closes().stream()
        .anyMatch(joint -> one.unit().has(joint.first()) || one.unit().has(joint.second()));
  }
}
