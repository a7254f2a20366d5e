package storyrod.layout.search;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * The best published use of the stock in the sets that have no best value for each instance: the
 * mean over a class of instances of the parts' area to the stock's area, cut right across, no part
 * turned.
 *
 * <p>Source: Gardeyn and Wauters, "A goal-driven ruin and recreate heuristic for the 2D
 * variable-sized bin packing problem with guillotine constraints", European Journal of Operational
 * Research 2022, tables 3 and 4, the best of all columns. The sets here are half of each class, so
 * beside its mean a value is an estimate.
 */
final class PublishedUse {
  private static final Map<String, Double> OF_CLASS =
      Map.ofEntries(
          Map.entry("M1", 0.984),
          Map.entry("M2", 0.972),
          Map.entry("M3", 0.980),
          Map.entry("Nice25", 0.998),
          Map.entry("Nice50", 0.935),
          Map.entry("Nice100", 0.918),
          Map.entry("Nice200", 0.926),
          Map.entry("Path25", 1.0),
          Map.entry("Path50", 0.981),
          Map.entry("Path100", 0.955),
          Map.entry("Path200", 0.946));

  private PublishedUse() {}

  /**
   * The area of stock that items, as read from a file, take at the published use of their class.
   */
  static OptionalLong stock(String instance, List<String[]> items) {
    Double use = OF_CLASS.get(instance.replaceFirst("(?<=\\d)(i\\d+)?b\\d+$|(?<=M\\d)[a-z]$", ""));
    double area =
        items.stream()
            .mapToDouble(
                f -> Double.parseDouble(f[2]) * Double.parseDouble(f[3]) * Long.parseLong(f[4]))
            .sum();
    return use == null ? OptionalLong.empty() : OptionalLong.of(Math.round(area / use));
  }
}
