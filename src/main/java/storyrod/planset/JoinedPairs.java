package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import storyrod.planset.JoineryPages.Pair;

/**
 * The marks that a joint's places join, as a cell of the joinery details tells them: few pairs one
 * by one, many by the part that they have in common, and no more than a page holds.
 *
 * @param more how many pairs are left out at the end
 */
public record JoinedPairs(List<Group> groups, int more) {
  private static final int FEW = 12;
  private static final double HIGHEST_MM = 130;

  public JoinedPairs {
    groups = List.copyOf(groups);
  }

  /** A part with those that are joined to it. */
  public record Group(String mark, List<Partner> partners) {
    public Group {
      partners = List.copyOf(partners);
    }

    private String text() {
      return mark + " – " + partners.stream().map(Partner::text).collect(Collectors.joining(", "));
    }
  }

  /**
   * A mark.
   *
   * @param times how many times it is joined; empty where many are joined once
   */
  public record Partner(String mark, String times) {
    private String text() {
      return times.isEmpty() ? mark : mark + " (" + times + ")";
    }
  }

  /** Those of all pairs that stand within a text's height. */
  static JoinedPairs of(List<Pair> pairs, TextMeasure measure, double widthMm) {
    int shown = pairs.size();
    JoinedPairs marks = first(shown, pairs);
    while (measure.heightMm(marks.text(), widthMm) > HIGHEST_MM) {
      shown = shown * 9 / 10;
      marks = first(shown, pairs);
    }
    return marks;
  }

  private static JoinedPairs first(int shown, List<Pair> pairs) {
    return new JoinedPairs(groups(pairs.subList(0, shown)), pairs.size() - shown);
  }

  private static List<Group> groups(List<Pair> pairs) {
    if (pairs.size() <= FEW) {
      return pairs.stream().map(each -> group(each.first(), List.of(each), Pair::second)).toList();
    }
    return distinct(pairs, Pair::first) < distinct(pairs, Pair::second)
        ? grouped(pairs, Pair::first, Pair::second)
        : grouped(pairs, Pair::second, Pair::first);
  }

  private static long distinct(List<Pair> pairs, Function<Pair, String> side) {
    return pairs.stream().map(side).distinct().count();
  }

  private static List<Group> grouped(
      List<Pair> pairs, Function<Pair, String> common, Function<Pair, String> other) {
    Map<String, List<Pair>> byMark = new LinkedHashMap<>();
    pairs.forEach(
        each -> byMark.computeIfAbsent(common.apply(each), mark -> new ArrayList<>()).add(each));
    return byMark.entrySet().stream()
        .map(each -> group(each.getKey(), each.getValue(), other))
        .toList();
  }

  private static Group group(String mark, List<Pair> pairs, Function<Pair, String> other) {
    return new Group(
        mark,
        pairs.stream().map(each -> new Partner(other.apply(each), times(each, pairs))).toList());
  }

  private static String times(Pair pair, List<Pair> pairs) {
    return pair.count() == 1 && pairs.size() > 1 ? "" : Integer.toString(pair.count());
  }

  /** What it takes room for. */
  String text() {
    return groups.stream().map(Group::text).collect(Collectors.joining(", ")) + " … " + more;
  }
}
