package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.build.Network.Lag;

/**
 * One pair of hands at work: it takes works in a given order, each as soon as the hands are free,
 * all that it needs is done and dry, nothing that it touches stands in clamps, and there are clamps
 * left for it.
 */
final class OneMaker {
  private final WorkDay day;
  private final List<Work> works;
  private final List<List<Lag>> needs = new ArrayList<>();

  /** Which glue a work has to leave alone, if it comes after it. */
  private final List<List<Lag>> keptOff = new ArrayList<>();

  private final int clamps;

  /** A maker in a shop; of the works, some need others. */
  OneMaker(WorkDay day, int clamps, List<Work> works, List<Lag> lags) {
    this.day = day;
    this.clamps = clamps;
    this.works = List.copyOf(works);
    works.forEach(work -> needs.add(new ArrayList<>()));
    lags.forEach(lag -> needs.get(lag.after()).add(lag));
    IntStream.range(0, works.size()).forEach(at -> keptOff.add(keptOff(at)));
  }

  private List<Lag> keptOff(int at) {
    return IntStream.range(0, works.size())
        .filter(each -> each != at)
        .mapToObj(each -> new Lag(each, at, works.get(each).keepsOff(works.get(at))))
        .filter(lag -> lag.minutes() > 0)
        .toList();
  }

  /**
   * How an order goes.
   *
   * @param finish the end of each work, by its place in the list of works
   * @param rests when the hands have nothing to do, in their order
   * @param held which work keeps the clamps, or the glue, that another waits for
   * @param offBefore for each work, before which other its clamps come off; -1 for none
   * @param end when all is done and dry
   */
  record Run(
      int[] start, int[] finish, List<Rest> rests, List<Lag> held, int[] offBefore, int end) {
    private static Run of(int works) {
      int[] off = new int[works];
      Arrays.fill(off, -1);
      return new Run(new int[works], new int[works], new ArrayList<>(), new ArrayList<>(), off, 0);
    }

    private Run ended(int at) {
      return new Run(start, finish, List.copyOf(rests), List.copyOf(held), offBefore, at);
    }

    int idleMinutes() {
      return rests.stream().mapToInt(Rest::minutes).sum();
    }
  }

  /** Hands free from when to when, how many minutes of work that costs, and for what. */
  record Rest(int work, int from, int to, int minutes, int awaited) {}

  Run run(int[] order) {
    Run run = Run.of(works.size());
    int free = 0;
    int end = 0;
    for (int i = 0; i < order.length; i++) {
      int at = order[i];
      take(run, order, i, free);
      free = run.finish[at];
      end = Math.max(end, free + works.get(at).waitMinutes());
    }
    return run.ended(end);
  }

  private void take(Run run, int[] order, int place, int free) {
    int at = order[place];
    Work work = works.get(at);
    int ready = free;
    int awaited = -1;
    for (Lag need : needs.get(at)) {
      int time = run.finish[need.before()] + need.minutes();
      if (time > ready) {
        ready = time;
        awaited = need.before();
      }
    }
    for (Lag glue : keptOff.get(at)) {
      int time = run.finish[glue.before()] + glue.minutes();
      if (run.finish[glue.before()] > 0 && time > ready) {
        run.held.add(glue);
        ready = time;
        awaited = glue.before();
      }
    }
    takeOffTouched(run, at);
    for (int next = next(run, order, place); next >= 0; next = next(run, order, place)) {
      run.offBefore[next] = at;
      if (free(run, next) > ready) {
        run.held.add(new Lag(next, at, works.get(next).glueUp().clampMinutes()));
        ready = free(run, next);
        awaited = next;
      }
    }
    run.start[at] = day.start(ready, work);
    run.finish[at] = day.finish(run.start[at], work);
    int lost = day.workable(free, ready);
    if (awaited >= 0 && lost > 0) {
      run.rests.add(new Rest(at, free, ready, lost, awaited));
    }
  }

  /** Clamps on what a work touches come off before it. */
  private void takeOffTouched(Run run, int at) {
    keptOff.get(at).stream()
        .mapToInt(Lag::before)
        .filter(each -> run.finish[each] > 0 && isClamped(run, each))
        .forEach(each -> run.offBefore[each] = at);
  }

  private boolean isClamped(Run run, int work) {
    return works.get(work).clamps() > 0 && run.offBefore[work] < 0;
  }

  private int free(Run run, int work) {
    return run.finish[work] + works.get(work).glueUp().clampMinutes();
  }

  /** What is first to free the clamps that a work finds too few of; none if there are enough. */
  private int next(Run run, int[] order, int place) {
    int wanted = Math.min(works.get(order[place]).clamps(), clamps);
    int left = clamps - wanted;
    int next = -1;
    for (int i = 0; i < place && wanted > 0; i++) {
      int each = order[i];
      if (isClamped(run, each)) {
        left -= works.get(each).clamps();
        next = next < 0 || free(run, each) < free(run, next) ? each : next;
      }
    }
    return left < 0 ? next : -1;
  }

  /**
   * The works that could be taken while the hands rest, had they not the order to keep.
   *
   * @param run of the works in the order of their list
   */
  List<Integer> ready(Run run, Rest rest) {
    return IntStream.range(rest.work() + 1, works.size())
        .filter(at -> isDone(run, needs.get(at), rest) && isDone(run, begun(at, rest), rest))
        .filter(at -> works.get(at).clamps() <= clamps - clampsHeld(run, rest))
        .filter(at -> day.start(rest.from(), works.get(at)) < rest.to())
        .boxed()
        .toList();
  }

  private static boolean isDone(Run run, List<Lag> lags, Rest rest) {
    return lags.stream()
        .allMatch(
            lag ->
                lag.before() < rest.work()
                    && run.finish[lag.before()] + lag.minutes() <= rest.from());
  }

  /** The glue that a work has to leave alone, of what is glued before a rest. */
  private List<Lag> begun(int at, Rest rest) {
    return keptOff.get(at).stream().filter(lag -> lag.before() < rest.work()).toList();
  }

  private int clampsHeld(Run run, Rest rest) {
    return IntStream.range(0, rest.work())
        .filter(at -> works.get(at).clamps() > 0 && free(run, at) > rest.from())
        .map(at -> works.get(at).clamps())
        .sum();
  }
}
