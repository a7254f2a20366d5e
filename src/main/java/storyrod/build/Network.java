package storyrod.build;

import java.util.ArrayList;
import java.util.List;

/**
 * Times of works that need each other, by the critical path method: a forward pass finds how early
 * each can be, a backward pass how late it may be without moving the end, and the difference is its
 * float (J. E. Kelley and M. R. Walker, Critical-Path Planning and Scheduling, 1959). What has to
 * dry is a lag from the end of a work to the start of the next.
 *
 * @param works in an order in which each comes after all that it needs
 */
record Network(WorkDay day, List<Work> works, List<Lag> lags) {
  Network {
    works = List.copyOf(works);
    lags = List.copyOf(lags);
  }

  /** What needs to pass between the end of one work and the start of another, by their places. */
  record Lag(int before, int after, int minutes) {
    static List<Lag> of(List<Precedence> precedence, List<Work> works) {
      return precedence.stream()
          .map(
              each ->
                  new Lag(
                      each.before() - 1,
                      each.after() - 1,
                      minutes(each, works.get(each.before() - 1), works.get(each.after() - 1))))
          .toList();
    }

    /** How long after the end of a work another can begin. */
    static int minutes(Precedence each, Work before, Work after) {
      return Math.max(each.dry() ? before.waitMinutes() : 0, before.keepsOff(after));
    }
  }

  /** The times of a work, and whether what comes later waits for it down to the end. */
  List<Times> times() {
    int size = works.size();
    int[] ready = new int[size];
    int[] start = new int[size];
    int[] finish = new int[size];
    List<List<Lag>> into = byAfter();
    for (int i = 0; i < size; i++) {
      for (Lag lag : into.get(i)) {
        ready[i] = Math.max(ready[i], finish[lag.before()] + lag.minutes());
      }
      start[i] = day.start(ready[i], works.get(i));
      finish[i] = day.finish(start[i], works.get(i));
    }
    boolean[] critical = critical(into, ready, finish);
    return latest(into, start, finish, critical);
  }

  private List<List<Lag>> byAfter() {
    List<List<Lag>> into = new ArrayList<>();
    works.forEach(work -> into.add(new ArrayList<>()));
    for (Lag lag : lags) {
      if (lag.before() >= lag.after()) {
        throw new IllegalStateException("bug: " + lag + " is against the order");
      }
      into.get(lag.after()).add(lag);
    }
    return into;
  }

  private int end(int[] finish) {
    int end = 0;
    for (int i = 0; i < finish.length; i++) {
      end = Math.max(end, finish[i] + works.get(i).waitMinutes());
    }
    return end;
  }

  /**
   * What the end is waiting for, and what that was waiting for in turn. Where nights hold no work,
   * some of it may have a little float.
   */
  private boolean[] critical(List<List<Lag>> into, int[] ready, int[] finish) {
    boolean[] critical = new boolean[finish.length];
    int end = end(finish);
    for (int i = finish.length - 1; i >= 0; i--) {
      critical[i] |= finish[i] + works.get(i).waitMinutes() == end;
      for (Lag lag : into.get(i)) {
        critical[lag.before()] |= critical[i] && finish[lag.before()] + lag.minutes() == ready[i];
      }
    }
    return critical;
  }

  private List<Times> latest(List<List<Lag>> into, int[] start, int[] finish, boolean[] critical) {
    int end = end(finish);
    int[] by = works.stream().mapToInt(work -> end - work.waitMinutes()).toArray();
    Times[] times = new Times[finish.length];
    for (int i = finish.length - 1; i >= 0; i--) {
      int lastFinish = day.lastFinish(by[i], works.get(i));
      int lastStart = day.lastStart(lastFinish, works.get(i));
      for (Lag lag : into.get(i)) {
        by[lag.before()] = Math.min(by[lag.before()], lastStart - lag.minutes());
      }
      int spare = day.workable(start[i], lastStart);
      times[i] = new Times(start[i], finish[i], lastStart, lastFinish, spare, critical[i]);
    }
    return List.of(times);
  }
}
