package storyrod.layout.length;

import java.util.Arrays;
import java.util.function.Predicate;

/**
 * The parts that are worth most among those that fit a span, each size no more often than it is
 * wanted: the pricing problem of Gilmore and Gomory (1961, 1963), exactly, in whole numbers.
 *
 * <p>A table over lengths rounded to coarse steps (parts down, so that it never tells too little)
 * says what the sizes from one on are worth at most; a search over true lengths, cut off by the
 * table, finds what can really be had. Where a step is one unit the search has no wrong turns.
 */
final class Knapsack {
  private static final int MOST_CELLS = 1_500_000;
  private static final int FEWEST_STEPS = 1000;
  private static final int MOST_PARTS = 4096;

  private final long[] sizes;
  private final int[] coarse;
  private final long step;
  private final int steps;
  private final long[][] table;
  private final Meter meter;

  private long[] worth = {};
  private int[] limit = {};
  private int[] chosen = new int[MOST_PARTS];
  private int depth;
  private long bestWorth;
  private int[] best = {};

  Knapsack(long[] sizes, long widest, Meter meter) {
    this.sizes = sizes;
    this.meter = meter;
    long most = Math.max(FEWEST_STEPS, MOST_CELLS / Math.max(1, sizes.length));
    step = Math.ceilDiv(widest + 1, most);
    steps = Math.toIntExact(widest / step);
    coarse =
        Arrays.stream(sizes)
            .mapToInt(size -> Math.toIntExact(Math.min(size / step, steps + 1)))
            .toArray();
    table = new long[sizes.length + 1][steps + 1];
  }

  /** Sets what parts are worth and how many of each may be taken. */
  void value(long[] newWorth, int[] newLimit) {
    worth = newWorth;
    limit = newLimit;
    for (int size = sizes.length - 1; size >= 0; size--) {
      fill(size);
    }
  }

  private void fill(int size) {
    long[] row = table[size];
    System.arraycopy(table[size + 1], 0, row, 0, row.length);
    meter.spend(row.length / 4);
    long most = coarse[size] == 0 ? limit[size] : Math.min(limit[size], steps / coarse[size]);
    if (worth[size] <= 0 || most == 0) {
      return;
    }
    if (coarse[size] == 0) {
      add(row, 0, most * worth[size]);
    } else if (most == steps / coarse[size]) {
      repeat(row, coarse[size], worth[size]);
    } else {
      addUpTo(row, size, most);
    }
  }

  /** Adds a size up to some times, in doubling groups. */
  private void addUpTo(long[] row, int size, long most) {
    long group = 1;
    for (long left = most; left > 0; left -= group, group *= 2) {
      group = Math.min(group, left);
      add(row, Math.toIntExact(group * coarse[size]), group * worth[size]);
    }
  }

  private void add(long[] row, int length, long value) {
    for (int at = row.length - 1; at >= length; at--) {
      row[at] = Math.max(row[at], row[at - length] + value);
    }
    meter.spend(row.length - length);
  }

  private void repeat(long[] row, int length, long value) {
    for (int at = length; at < row.length; at++) {
      row[at] = Math.max(row[at], row[at - length] + value);
    }
    meter.spend(row.length - length);
  }

  /** No choice in a span is worth more than this. */
  long atMost(long span) {
    return table[0][coarse(span)];
  }

  private int coarse(long length) {
    return (int) Math.min(length / step, steps);
  }

  /** The choice that is worth most of all. */
  int[] best(long span) {
    int[] found = {};
    long most = 0;
    for (int largest = 0; largest < sizes.length; largest++) {
      int[] sizesOf = bestWith(largest, span, most);
      if (sizesOf.length > 0) {
        found = sizesOf;
        most = bestWorth;
      }
    }
    return found;
  }

  /**
   * The choice that is worth most among those with a given size as their largest, or none if none
   * is worth more than some value.
   *
   * @return the sizes chosen, the largest first; empty if there is none
   */
  int[] bestWith(int largest, long span, long above) {
    best = new int[0];
    bestWorth = above;
    if (!mayBeat(largest, span, above)) {
      return best;
    }
    if (step == 1) {
      bestWorth = mostWith(largest, span) - 1;
      search(largest, span);
    }
    if (best.length == 0) {
      bestWorth = above;
      search(largest, span);
    }
    return best;
  }

  private void search(int largest, long span) {
    depth = 0;
    take(largest, span, 0);
  }

  /** Whether every answer since the last values were set is exact. */
  boolean isSure() {
    return !meter.isEnded();
  }

  /** Whether a choice with a given largest size could be worth more than some value. */
  boolean mayBeat(int largest, long span, long above) {
    return limit[largest] > 0 && sizes[largest] <= span && mostWith(largest, span) > above;
  }

  /** What a choice with a given largest size is worth at most. */
  long mostWith(int largest, long span) {
    long rest = span - sizes[largest];
    return worth[largest] + table[limit[largest] > 1 ? largest : largest + 1][coarse(rest)];
  }

  /** What the last choice found is worth. */
  long bestWorth() {
    return bestWorth;
  }

  private void take(int size, long room, long value) {
    long left = room;
    long sum = value;
    int before = depth;
    int most = (int) Math.min(limit[size], room / sizes[size]);
    int taken = 0;
    while (taken < most && depth < MOST_PARTS) {
      chosen[depth++] = size;
      taken++;
      left -= sizes[size];
      sum += worth[size];
    }
    while (taken > 0) {
      if (sum > bestWorth) {
        bestWorth = sum;
        best = Arrays.copyOf(chosen, depth);
      }
      descend(size + 1, left, sum);
      depth--;
      taken--;
      left += sizes[size];
      sum -= worth[size];
    }
    depth = before;
  }

  private void descend(int from, long room, long value) {
    int at = coarse(room);
    for (int size = from; size < sizes.length && value + table[size][at] > bestWorth; size++) {
      meter.spend(2);
      if (sizes[size] <= room && limit[size] > 0 && worth[size] > 0) {
        take(size, room, value);
      }
      if (meter.isEnded()) {
        return;
      }
    }
  }

  /**
   * Shows every choice that is worth at least some value, those of worthless parts too, until told
   * to stop or the meter has ended.
   *
   * @return whether all were shown
   */
  boolean each(long span, long atLeast, Predicate<int[]> show) {
    depth = 0;
    return eachFrom(0, span, -atLeast, show);
  }

  private boolean eachFrom(int from, long room, long surplus, Predicate<int[]> show) {
    int at = coarse(room);
    for (int size = from; size < sizes.length && surplus + table[size][at] >= 0; size++) {
      meter.spend(2);
      if (meter.isEnded()) {
        return false;
      }
      int most = (int) Math.min(limit[size], room / sizes[size]);
      for (int taken = 1; taken <= most; taken++) {
        chosen[depth++] = size;
        long value = surplus + taken * worth[size];
        boolean shown = value < 0 || show.test(Arrays.copyOf(chosen, depth));
        if (!shown || !eachFrom(size + 1, room - taken * sizes[size], value, show)) {
          return false;
        }
      }
      depth -= Math.max(0, most);
    }
    return true;
  }
}
