package storyrod.layout.length;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Best fit decreasing: each part, the largest first, into the open span that it fills best. */
final class BestFit {
  private final Bars bars;
  private final int[] left;
  private final int[] kinds;
  private final List<Open> opened = new ArrayList<>();
  private final TreeMap<Long, Deque<Room>> rooms = new TreeMap<>();

  private BestFit(Bars bars, int[] available, int[] kinds) {
    this.bars = bars;
    this.left = available.clone();
    this.kinds = kinds;
  }

  private record Open(int stock, List<List<Integer>> spans) {
    Pattern pattern() {
      return new Pattern(
          stock,
          spans.stream()
              .map(span -> span.stream().mapToInt(size -> size).toArray())
              .toArray(int[][]::new));
    }
  }

  private record Room(List<Integer> span, long length) {}

  /** Fills kinds of stock in an order of preference; nothing if the stock runs out. */
  static Optional<List<Pattern>> fill(Bars bars, int[] wanted, int[] available, int[] kinds) {
    BestFit fit = new BestFit(bars, available, kinds);
    for (int size = 0; size < wanted.length; size++) {
      for (int i = 0; i < wanted[size]; i++) {
        if (!fit.place(size)) {
          return Optional.empty();
        }
      }
    }
    return Optional.of(
        fit.opened.stream().map(Open::pattern).filter(pattern -> !pattern.isEmpty()).toList());
  }

  private boolean place(int size) {
    long length = bars.sizes()[size];
    Map.Entry<Long, Deque<Room>> found = rooms.ceilingEntry(length);
    if (found == null) {
      if (!open(length)) {
        return false;
      }
      found = rooms.ceilingEntry(length);
    }
    Room room = found.getValue().removeFirst();
    if (found.getValue().isEmpty()) {
      rooms.remove(found.getKey());
    }
    room.span.add(size);
    add(new Room(room.span, room.length - length));
    return true;
  }

  private boolean open(long length) {
    for (int kind : kinds) {
      Bars.Bar bar = bars.bars().get(kind);
      if (left[kind] > 0 && bar.widest() >= length) {
        left[kind]--;
        open(kind, bar);
        return true;
      }
    }
    return false;
  }

  private void open(int kind, Bars.Bar bar) {
    List<List<Integer>> spans = new ArrayList<>();
    Arrays.stream(bar.spans())
        .forEach(
            span -> {
              spans.add(new ArrayList<>());
              add(new Room(spans.getLast(), span));
            });
    opened.add(new Open(kind, spans));
  }

  private void add(Room room) {
    rooms.computeIfAbsent(room.length, length -> new ArrayDeque<>()).addLast(room);
  }
}
