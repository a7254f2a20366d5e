package storyrod.stock;

import java.util.List;

/** The fewest sheets that any layout can use, whether its cuts go right across or not. */
final class LayoutBounds {
  private LayoutBounds() {}

  /** The bound by area alone, which is often enough. */
  static int byArea(Enlarged sizes) {
    long area = 0;
    for (int part = 0; part < sizes.size(); part++) {
      area = Math.addExact(area, sizes.area(part));
    }
    return Math.toIntExact(roundedUp(area, sizes.sheetArea()));
  }

  /**
   * The bound by area of sizes changed by dual feasible functions, the best of all pairs of one for
   * each direction. It contains the bound by parts larger than half a sheet.
   */
  static int best(Enlarged sizes) {
    List<Changed> alongs = changed(DualFeasible.forSizes(sizes.length, bothSizes(sizes)), sizes);
    List<Changed> acrosses = changed(DualFeasible.forSizes(sizes.width, bothSizes(sizes)), sizes);
    int best = byArea(sizes);
    for (Changed along : alongs) {
      for (Changed across : acrosses) {
        best = Math.max(best, bound(sizes, along, across));
      }
    }
    return best;
  }

  /** All parts' sizes as one function changes them. */
  private record Changed(long capacity, long[] lengths, long[] widths) {}

  private static long[] bothSizes(Enlarged sizes) {
    return java.util.stream.LongStream.concat(
            java.util.Arrays.stream(sizes.lengths()), java.util.Arrays.stream(sizes.widths()))
        .toArray();
  }

  private static List<Changed> changed(List<DualFeasible> functions, Enlarged sizes) {
    return functions.stream()
        .map(
            each ->
                new Changed(
                    each.capacity(), each.apply(sizes.lengths()), each.apply(sizes.widths())))
        .toList();
  }

  private static int bound(Enlarged sizes, Changed along, Changed across) {
    long sum = 0;
    for (int part = 0; part < sizes.size(); part++) {
      long upright = along.lengths[part] * across.widths[part];
      long turned = along.widths[part] * across.lengths[part];
      if (!sizes.allows(part, true)) {
        sum += upright;
      } else {
        // A square's second position is not listed, and it is the same as the first.
        sum += sizes.allows(part, false) ? Math.min(upright, turned) : turned;
      }
    }
    return Math.toIntExact(roundedUp(sum, along.capacity * across.capacity));
  }

  private static long roundedUp(long sum, long each) {
    return Math.ceilDiv(sum, each);
  }
}
