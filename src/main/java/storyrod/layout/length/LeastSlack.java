package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Fills one piece of stock after the other, each with as little slack as a short search finds. */
final class LeastSlack {
  private static final int MOST_NODES = 1500;
  private static final int MOST_PARTS = 4096;

  private final Bars bars;
  private final Meter meter;
  private final int[] chosen = new int[MOST_PARTS];
  private int[] wanted = {};
  private int nodes;
  private long least;
  private int[] best = {};

  LeastSlack(Bars bars, Meter meter) {
    this.bars = bars;
    this.meter = meter;
  }

  /** A layout of some parts on some stock; nothing if the stock runs out. */
  Optional<List<Pattern>> fill(int[] parts, int[] available) {
    wanted = parts.clone();
    int[] left = available.clone();
    List<Pattern> patterns = new ArrayList<>();
    for (int largest = 0; largest < wanted.length; ) {
      if (wanted[largest] == 0) {
        largest++;
        continue;
      }
      Optional<Pattern> next = next(largest, left);
      if (next.isEmpty() || meter.isEnded()) {
        return Optional.empty();
      }
      patterns.add(next.get().taking(wanted));
      left[next.get().stock()]--;
    }
    return Optional.of(patterns);
  }

  private Optional<Pattern> next(int largest, int[] left) {
    Optional<Pattern> found = Optional.empty();
    double leastPrice = Double.MAX_VALUE;
    for (int kind = 0; kind < left.length; kind++) {
      if (left[kind] > 0 && bars.bars().get(kind).widest() >= bars.sizes()[largest]) {
        Pattern pattern = pattern(kind, largest);
        double price = bars.bars().get(kind).price() / (double) held(pattern);
        if (price < leastPrice) {
          leastPrice = price;
          found = Optional.of(pattern);
        }
      }
    }
    return found;
  }

  private long held(Pattern pattern) {
    return Arrays.stream(pattern.spans()).mapToLong(bars::sum).sum();
  }

  private Pattern pattern(int kind, int largest) {
    long[] spans = bars.bars().get(kind).spans();
    int[] before = wanted.clone();
    int home = smallestFor(spans, bars.sizes()[largest]);
    int[][] filled = new int[spans.length][];
    filled[home] = fullest(largest, spans[home]);
    take(filled[home]);
    for (int i = 0; i < spans.length; i++) {
      if (i != home) {
        filled[i] = fullest(-1, spans[i]);
        take(filled[i]);
      }
    }
    wanted = before;
    return new Pattern(kind, filled);
  }

  private static int smallestFor(long[] spans, long length) {
    int best = -1;
    for (int i = 0; i < spans.length; i++) {
      if (spans[i] >= length && (best < 0 || spans[i] < spans[best])) {
        best = i;
      }
    }
    return best;
  }

  private void take(int[] sizes) {
    for (int size : sizes) {
      wanted[size]--;
    }
  }

  /** The fullest choice found for a span, around a given part if there is one. */
  private int[] fullest(int first, long span) {
    nodes = 0;
    least = span + 1;
    best = new int[0];
    if (first < 0) {
      search(0, span, 0);
      return best;
    }
    chosen[0] = first;
    wanted[first]--;
    search(first, span - bars.sizes()[first], 1);
    wanted[first]++;
    return best;
  }

  private void search(int from, long room, int depth) {
    if (room < least) {
      least = room;
      best = Arrays.copyOf(chosen, depth);
    }
    for (int size = from; size < wanted.length && least > 0 && depth < MOST_PARTS; size++) {
      if (++nodes > MOST_NODES) {
        break;
      }
      if (wanted[size] > 0 && bars.sizes()[size] <= room) {
        chosen[depth] = size;
        wanted[size]--;
        search(size, room - bars.sizes()[size], depth + 1);
        wanted[size]++;
      }
    }
    meter.spend(4);
  }
}
