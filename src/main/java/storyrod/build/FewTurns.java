package storyrod.build;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.geometry.Face;

/**
 * Orders the steps that fit units so that the piece is turned over as seldom as can be.
 *
 * <p>Each step keeps its units and the way on which they come, and some steps keep their order
 * ({@link StepOrder}). While the piece lies in one way, every step that may be done so is done: a
 * step that is done spoils none that is still to be done. So only the ways of lying, one after the
 * other, have to be chosen; all short rows of them are tried, the shortest first. Of the orders
 * with the fewest turns the one nearest to the given order is taken.
 */
final class FewTurns {
  private final List<Optional<Face>> lies;
  private final List<BitSet> before;

  /**
   * Steps by their numbers.
   *
   * @param lies on which face the piece lies for each; empty where that does not matter
   * @param before for each, the steps that have to come before it, all of lower numbers
   */
  FewTurns(List<Optional<Face>> lies, List<BitSet> before) {
    this.lies = lies;
    this.before = before;
  }

  /** Steps done so far, in order, and how the piece lies then. */
  private record Done(List<Integer> order, Face down) {
    BitSet set() {
      BitSet set = new BitSet();
      order.forEach(set::set);
      return set;
    }
  }

  /** The numbers of the steps in the order found; the given order if none has fewer turns. */
  List<Integer> order() {
    List<Integer> given = IntStream.range(0, lies.size()).boxed().toList();
    return Stream.concat(Stream.of(given), shortest().stream())
        .min(
            Comparator.comparingInt(
                    (List<Integer> each) -> turns(each.stream().map(lies::get).toList()))
                .thenComparingInt(FewTurns::moved))
        .orElseThrow();
  }

  /** Whether no order could have fewer turns, for each way of lying comes once. */
  static boolean isLeast(List<Optional<Face>> lies) {
    List<Face> others =
        lies.stream()
            .flatMap(Optional::stream)
            .filter(way -> way != Lying.UPRIGHT)
            .distinct()
            .toList();
    return turns(lies) <= (others.isEmpty() ? 0 : others.size() + 1);
  }

  /** How often the piece is laid on another face, from standing up to standing up again. */
  static int turns(List<Optional<Face>> lies) {
    List<Face> row = new ArrayList<>();
    row.add(Lying.UPRIGHT);
    lies.forEach(each -> each.ifPresent(row::add));
    row.add(Lying.UPRIGHT);
    return (int) IntStream.range(1, row.size()).filter(i -> row.get(i) != row.get(i - 1)).count();
  }

  /** How many pairs of steps have changed places. */
  private static int moved(List<Integer> order) {
    return (int)
        IntStream.range(0, order.size())
            .mapToLong(
                i -> order.subList(i, order.size()).stream().filter(s -> s < order.get(i)).count())
            .sum();
  }

  private List<List<Integer>> shortest() {
    List<Done> open = List.of(during(new Done(List.of(), Lying.UPRIGHT)));
    while (open.stream().noneMatch(this::isAll)) {
      Map<BitSet, Map<Face, Done>> next = new LinkedHashMap<>();
      for (Done done : open) {
        for (Face down : ways()) {
          if (down != done.down()) {
            Done more = during(new Done(done.order(), down));
            next.computeIfAbsent(more.set(), set -> new LinkedHashMap<>()).putIfAbsent(down, more);
          }
        }
      }
      open = next.values().stream().flatMap(each -> each.values().stream()).toList();
    }
    return open.stream().filter(this::isAll).map(Done::order).toList();
  }

  private List<Face> ways() {
    return lies.stream().flatMap(Optional::stream).distinct().toList();
  }

  private boolean isAll(Done done) {
    return done.order().size() == lies.size();
  }

  /** Does all that can be done while the piece lies as it does, in the given order. */
  private Done during(Done start) {
    List<Integer> order = new ArrayList<>(start.order());
    BitSet done = start.set();
    boolean goesOn = true;
    while (goesOn) {
      Optional<Integer> next =
          IntStream.range(0, lies.size())
              .filter(step -> !done.get(step))
              .filter(step -> lies.get(step).filter(way -> way != start.down()).isEmpty())
              .filter(step -> isReady(step, done))
              .boxed()
              .findFirst();
      next.ifPresent(order::add);
      next.ifPresent(done::set);
      goesOn = next.isPresent();
    }
    return new Done(order, start.down());
  }

  private boolean isReady(int step, BitSet done) {
    BitSet missing = (BitSet) before.get(step).clone();
    missing.andNot(done);
    return missing.isEmpty();
  }
}
