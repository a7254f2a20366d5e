package storyrod.layout.length;

import java.util.ArrayList;
import java.util.List;

/** The least price of a tiny job by trying everything. */
final class BruteForce {
  private final Bars bars;
  private final List<Long> rooms = new ArrayList<>();
  private final int[] left;
  private final List<Integer> parts = new ArrayList<>();
  private long best = Long.MAX_VALUE;

  private BruteForce(Bars bars) {
    this.bars = bars;
    this.left = bars.available();
    for (int size = 0; size < bars.kinds(); size++) {
      for (int i = 0; i < bars.wanted()[size]; i++) {
        parts.add(size);
      }
    }
  }

  /** The least price, or {@link Long#MAX_VALUE} if the stock does not give all parts. */
  static long price(Bars bars) {
    BruteForce force = new BruteForce(bars);
    force.place(0, 0, 0);
    return force.best;
  }

  private void place(int part, long price, int from) {
    if (price >= best) {
      return;
    }
    if (part == parts.size()) {
      best = price;
      return;
    }
    long size = bars.sizes()[parts.get(part)];
    for (int i = 0; i < rooms.size(); i++) {
      if (rooms.get(i) >= size) {
        rooms.set(i, rooms.get(i) - size);
        place(part + 1, price, 0);
        rooms.set(i, rooms.get(i) + size);
      }
    }
    // Pieces opened for the same part come in one order only.
    for (int kind = from; kind < left.length; kind++) {
      if (left[kind] > 0) {
        open(kind, part, price);
      }
    }
  }

  private void open(int kind, int part, long price) {
    Bars.Bar bar = bars.bars().get(kind);
    long size = bars.sizes()[parts.get(part)];
    int before = rooms.size();
    left[kind]--;
    for (long span : bar.spans()) {
      rooms.add(span);
    }
    for (int i = before; i < rooms.size(); i++) {
      if (rooms.get(i) >= size) {
        rooms.set(i, rooms.get(i) - size);
        place(part + 1, price + bar.price(), 0);
        rooms.set(i, rooms.get(i) + size);
      }
    }
    rooms.subList(before, rooms.size()).clear();
    left[kind]++;
  }
}
