package storyrod.layout.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.layout.sheet.Enlarged.Kind;
import storyrod.layout.sheet.Enlarged.Type;

/** The least that any layout can take, whether its cuts go right across or not; whole numbers. */
final class LayoutBounds {
  /** Sums of areas stay below this. */
  private static final double MOST_AREA = 0x1.0p61;

  private final Type[] types;
  private final long[] counts;
  private final Kind[] kinds;
  private final StockCover cover;
  private final long largeParts;

  LayoutBounds(Enlarged sizes) {
    types = sizes.types.toArray(Type[]::new);
    counts = sizes.types.stream().mapToLong(Type::count).toArray();
    kinds = sizes.kinds.toArray(Kind[]::new);
    cover = new StockCover(sizes.kinds);
    largeParts = OneEach.count(sizes);
  }

  /** The cheapest stock whose area is enough. */
  long byArea() {
    double sum = IntStream.range(0, types.length).mapToDouble(this::area).sum();
    double most = sum + Arrays.stream(kinds).mapToDouble(Kind::area).max().orElse(0);
    int shift = Math.max(0, Math.getExponent(most / MOST_AREA) + 1);
    long need = 0;
    for (int i = 0; i < types.length; i++) {
      need += counts[i] * (types[i].area() >> shift);
    }
    long[] gives = Arrays.stream(kinds).mapToLong(kind -> -(-kind.area() >> shift)).toArray();
    return cover.least(need, gives);
  }

  /** The cheapest stock that has a piece for each of the parts that share none. */
  private long byLargeParts() {
    long[] one = new long[kinds.length];
    Arrays.fill(one, 1);
    return cover.least(largeParts, one);
  }

  private double area(int type) {
    return (double) counts[type] * types[type].area();
  }

  /**
   * The bound by area of sizes changed by dual feasible functions, the best of all pairs of one for
   * each direction. It contains the bound by parts larger than half a sheet.
   */
  long best() {
    if (types.length == 0) {
      return 0;
    }
    long best = Math.max(byArea(), byLargeParts());
    List<Changed> alongs = changed(Arrays.stream(kinds).mapToInt(Kind::length).toArray());
    List<Changed> acrosses = changed(Arrays.stream(kinds).mapToInt(Kind::width).toArray());
    double most = 0;
    for (Changed along : alongs) {
      for (Changed across : acrosses) {
        long need = need(along, across);
        long[] gives = gives(along, across);
        double about = cover.about(need, gives);
        if (about > best && about > most * 0.999) {
          most = Math.max(most, about);
          best = Math.max(best, cover.least(need, gives));
        }
      }
    }
    return best;
  }

  /** All sizes as one function changes them, the types' and the stock's along one axis. */
  private record Changed(long[] lengths, long[] widths, long[] stock) {}

  private List<Changed> changed(int[] stock) {
    long capacity = Arrays.stream(stock).max().orElse(0);
    long[] lengths =
        Arrays.stream(types).mapToLong(type -> Math.min(type.length(), capacity)).toArray();
    long[] widths =
        Arrays.stream(types).mapToLong(type -> Math.min(type.width(), capacity)).toArray();
    long[] both = new long[2 * types.length];
    System.arraycopy(lengths, 0, both, 0, types.length);
    System.arraycopy(widths, 0, both, types.length, types.length);
    return DualFeasible.forSizes(capacity, both).stream()
        .map(
            each ->
                new Changed(
                    each.apply(lengths),
                    each.apply(widths),
                    each.apply(Arrays.stream(stock).asLongStream().toArray())))
        .toList();
  }

  private long need(Changed along, Changed across) {
    long sum = 0;
    for (int i = 0; i < types.length; i++) {
      long upright = along.lengths[i] * across.widths[i];
      long turned = along.widths[i] * across.lengths[i];
      if (!types[i].turned()) {
        sum += counts[i] * upright;
      } else {
        // A square's second position is not listed, and it is the same as the first.
        sum += counts[i] * (types[i].upright() ? Math.min(upright, turned) : turned);
      }
    }
    return sum;
  }

  private static long[] gives(Changed along, Changed across) {
    long[] gives = new long[along.stock.length];
    for (int i = 0; i < gives.length; i++) {
      gives[i] = along.stock[i] * across.stock[i];
    }
    return gives;
  }
}
