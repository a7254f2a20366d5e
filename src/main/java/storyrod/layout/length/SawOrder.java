package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * An order of sawing with few settings of the stop: stock by stock, equal patterns together, equal
 * lengths of a pattern together, and each piece begun with the length that was sawn last, if it has
 * one.
 */
final class SawOrder {
  private final List<List<Pattern>> groups = new ArrayList<>();
  private final List<Pattern> order = new ArrayList<>();
  private int last = -1;

  private SawOrder() {}

  static List<Pattern> of(List<Pattern> patterns) {
    TreeMap<Integer, List<Pattern>> byStock = new TreeMap<>();
    patterns.forEach(
        each -> byStock.computeIfAbsent(each.stock(), stock -> new ArrayList<>()).add(each));
    SawOrder order = new SawOrder();
    byStock.values().forEach(order::addAll);
    return order.order;
  }

  private void addAll(List<Pattern> patterns) {
    patterns.stream()
        .map(SawOrder::sorted)
        .sorted(Comparator.comparing(Pattern::spans, SawOrder::compare))
        .forEach(this::group);
    while (!groups.isEmpty()) {
      groups.remove(next()).forEach(this::add);
    }
  }

  private void group(Pattern pattern) {
    boolean isNew =
        groups.isEmpty() || compare(groups.getLast().getFirst().spans(), pattern.spans()) != 0;
    if (isNew) {
      groups.add(new ArrayList<>());
    }
    groups.getLast().add(pattern);
  }

  private static Pattern sorted(Pattern pattern) {
    return new Pattern(
        pattern.stock(),
        Arrays.stream(pattern.spans())
            .map(span -> Arrays.stream(span).sorted().toArray())
            .toArray(int[][]::new));
  }

  private static int compare(int[][] a, int[][] b) {
    for (int i = 0; i < a.length; i++) {
      int order = Arrays.compare(a[i], b[i]);
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  /** The first group that goes on with the last length, or just the first. */
  private int next() {
    return IntStream.range(0, groups.size())
        .filter(i -> holds(groups.get(i).getFirst().spans()[0], last))
        .findFirst()
        .orElse(0);
  }

  private static boolean holds(int[] span, int size) {
    return Arrays.stream(span).anyMatch(each -> each == size);
  }

  private void add(Pattern pattern) {
    int[][] spans = new int[pattern.spans().length][];
    for (int i = 0; i < spans.length; i++) {
      spans[i] = lastFirst(pattern.spans()[i]);
      last = spans[i].length > 0 ? spans[i][spans[i].length - 1] : last;
    }
    order.add(new Pattern(pattern.stock(), spans));
  }

  private int[] lastFirst(int[] span) {
    return IntStream.concat(
            Arrays.stream(span).filter(size -> size == last),
            Arrays.stream(span).filter(size -> size != last))
        .toArray();
  }
}
