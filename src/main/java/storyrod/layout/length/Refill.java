package storyrod.layout.length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Looks for a layout on a given number of equal pieces: all but two are filled, and emptied and
 * filled again one by one from their own parts and the parts left over, until what is left over
 * goes on the last two. The partial layouts are those of the consistent neighbourhood search of
 * Buljubašić and Vasquez (2016); a refill may be a little shorter than before, ever less so, as in
 * threshold accepting (Dueck and Scheuer 1990).
 */
final class Refill {
  private static final int LAST = 2;
  private static final int MOST_NODES = 300;
  private static final int MOST_LEFT = 24;
  private static final int SOME = 8;

  /** The share of its length that a piece may lose when it is refilled, at the hottest. */
  private static final double HEAT = 0.01;

  private static final int ROUNDS_TO_COLD = 20_000;

  private final long[] sizes;
  private final long capacity;
  private final SplittableRandom chance;
  private final Meter meter;
  private final int[][] pieces;
  private int[] over = {};
  private long overLength;

  private int[] pool = {};
  private long[] tail = {};
  private boolean[] taken = {};
  private int nodes;

  Refill(Bars bars, List<Pattern> start, int count, SplittableRandom chance, Meter meter) {
    this.sizes = bars.sizes();
    this.capacity = bars.widest();
    this.chance = chance;
    this.meter = meter;
    pieces = new int[Math.max(0, count - LAST)][0];
    take(bars, start);
  }

  /** Whether all stock is alike, in one span, so that only how many pieces there are matters. */
  static boolean suits(Bars bars) {
    return bars.bars().size() == 1 && bars.hasOneSpanEach();
  }

  private void take(Bars bars, List<Pattern> start) {
    List<int[]> fullest = new ArrayList<>();
    start.forEach(pattern -> fullest.add(pattern.spans()[0]));
    fullest.sort((a, b) -> Long.compare(bars.sum(b), bars.sum(a)));
    List<Integer> rest = new ArrayList<>();
    for (int i = 0; i < fullest.size(); i++) {
      if (i < pieces.length) {
        pieces[i] = fullest.get(i);
      } else {
        Arrays.stream(fullest.get(i)).forEach(rest::add);
      }
    }
    over = rest.stream().mapToInt(i -> i).toArray();
    overLength = bars.sum(over);
  }

  /** The filled pieces, or none if the meter has ended first. */
  List<Pattern> run() {
    for (long round = 0; pieces.length > 0 && !meter.isEnded(); round++) {
      if (overLength <= LAST * capacity && over.length <= MOST_LEFT && split()) {
        return found();
      }
      double heat = capacity * HEAT * (1 - round % ROUNDS_TO_COLD / (double) ROUNDS_TO_COLD);
      refill(chance.nextBoolean() ? any() : emptiest(), heat);
    }
    return List.of();
  }

  private List<Pattern> found() {
    List<Pattern> all = new ArrayList<>();
    for (int[] piece : pieces) {
      all.add(Pattern.single(0, piece));
    }
    all.add(Pattern.single(0, picked(true)));
    all.add(Pattern.single(0, picked(false)));
    return all.stream().filter(pattern -> !pattern.isEmpty()).toList();
  }

  private int any() {
    return chance.nextInt(pieces.length);
  }

  /** The emptiest of some pieces. */
  private int emptiest() {
    int emptiest = any();
    for (int i = 1; i < SOME; i++) {
      int other = any();
      emptiest = length(pieces[other]) < length(pieces[emptiest]) ? other : emptiest;
    }
    return emptiest;
  }

  private void refill(int at, double heat) {
    int[] old = pieces[at];
    long before = length(old);
    load(old, over);
    boolean found = before < capacity && search(before + 1, capacity, old);
    if (!found) {
      long worse = (long) (heat * chance.nextDouble() * chance.nextDouble());
      found = search(Math.max(1, before - worse), capacity, old);
    }
    if (!found) {
      return;
    }
    int[] in = picked(true);
    pieces[at] = in;
    over = picked(false);
    overLength += before - length(in);
  }

  private long length(int[] parts) {
    long sum = 0;
    for (int part : parts) {
      sum += sizes[part];
    }
    return sum;
  }

  /** Puts parts in the pool, the largest first. */
  private void load(int[] one, int[] other) {
    pool = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, pool, one.length, other.length);
    Arrays.sort(pool);
    tail = new long[pool.length + 1];
    for (int i = pool.length - 1; i >= 0; i--) {
      tail[i] = tail[i + 1] + sizes[pool[i]];
    }
    taken = new boolean[pool.length];
  }

  private int[] picked(boolean in) {
    int[] found = new int[pool.length];
    int count = 0;
    for (int i = 0; i < pool.length; i++) {
      if (taken[i] == in) {
        found[count++] = pool[i];
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** Finds parts of the pool that are together between two lengths, by chance, but not some. */
  private boolean search(long least, long most, int[] but) {
    nodes = 0;
    boolean found = find(0, least, most, but);
    meter.spend(12L * nodes + 300);
    return found;
  }

  private boolean find(int at, long least, long most, int[] but) {
    if (most < 0 || tail[at] < least || ++nodes > MOST_NODES) {
      return false;
    }
    if (at == pool.length) {
      return but.length == 0 || !Arrays.equals(picked(true), but);
    }
    long size = sizes[pool[at]];
    boolean first = chance.nextBoolean();
    for (int i = 0; i < 2; i++) {
      boolean take = first == (i == 0);
      taken[at] = take;
      if (find(at + 1, take ? least - size : least, take ? most - size : most, but)) {
        return true;
      }
    }
    taken[at] = false;
    return false;
  }

  /** Whether what is left over goes on the last two pieces; then it is there. */
  private boolean split() {
    load(over, new int[0]);
    if (!search(overLength - capacity, capacity, new int[0])) {
      return false;
    }
    return true;
  }
}
