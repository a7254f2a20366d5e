package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A job in which some parts are joined end to end, so that they lie on one piece of stock: a
 * smaller job, whose layouts are layouts of the first one. Only sizes wanted once can be joined.
 */
final class Joined {
  private final Bars first;
  private final List<int[]> members;
  private final int[] place;
  private final Bars bars;

  private Joined(Bars first, List<int[]> groups) {
    this.first = first;
    members = groups.stream().sorted(Comparator.comparingLong(group -> -first.sum(group))).toList();
    place = new int[first.kinds()];
    for (int at = 0; at < members.size(); at++) {
      for (int size : members.get(at)) {
        place[size] = at;
      }
    }
    bars =
        new Bars(
            members.stream().mapToLong(first::sum).toArray(),
            members.stream().mapToInt(group -> first.wanted()[group[0]]).toArray(),
            first.bars());
  }

  /** The job as it is. */
  static Joined none(Bars bars) {
    return new Joined(
        bars, IntStream.range(0, bars.kinds()).mapToObj(size -> new int[] {size}).toList());
  }

  /** The job in which the parts at two places, wanted once each, are one. */
  Joined with(int a, int b) {
    List<int[]> groups = new ArrayList<>(members);
    groups.remove(members.get(a));
    groups.remove(members.get(b));
    groups.add(
        IntStream.concat(Arrays.stream(members.get(a)), Arrays.stream(members.get(b)))
            .sorted()
            .toArray());
    return new Joined(first, groups);
  }

  /** The job with what is joined as one part each; its sizes are the places. */
  Bars bars() {
    return bars;
  }

  boolean isNone() {
    return members.size() == first.kinds();
  }

  /** Where a size of the first job has gone. */
  int place(int size) {
    return place[size];
  }

  /** Whether a pattern of the first job holds nothing joined in part. */
  boolean allows(Pattern pattern) {
    int[] held = new int[members.size()];
    for (int[] span : pattern.spans()) {
      for (int size : span) {
        held[place[size]]++;
      }
    }
    return IntStream.range(0, held.length)
        .allMatch(at -> held[at] == 0 || held[at] % members.get(at).length == 0);
  }

  /** A pattern of places as one of the first job. */
  Pattern apart(Pattern pattern) {
    if (isNone()) {
      return pattern;
    }
    int[][] spans =
        Arrays.stream(pattern.spans())
            .map(
                span ->
                    Arrays.stream(span)
                        .flatMap(at -> Arrays.stream(members.get(at)))
                        .sorted()
                        .toArray())
            .toArray(int[][]::new);
    return new Pattern(pattern.stock(), spans);
  }

  /** What places are worth by the duals of the first job; those of the stock stay behind them. */
  double[] duals(double[] duals) {
    if (isNone()) {
      return duals;
    }
    double[] joined = new double[members.size() + duals.length - first.kinds()];
    for (int size = 0; size < place.length; size++) {
      joined[place[size]] += Math.max(0, duals[size]);
    }
    System.arraycopy(duals, first.kinds(), joined, members.size(), joined.length - members.size());
    return joined;
  }
}
