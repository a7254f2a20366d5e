package storyrod.build;

import java.util.ArrayList;
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
   * @param end when all is done and dry
   */
  record Run(int[] start, int[] finish, List<Rest> rests, List<Lag> held, int end) {
    int idleMinutes() {
      return rests.stream().mapToInt(Rest::minutes).sum();
    }
  }

  /** Hands free from when to when, how many minutes of work that costs, and for what. */
  record Rest(int work, int from, int to, int minutes, int awaited) {}

  Run run(int[] order) {
    Run run =
        new Run(
            new int[works.size()], new int[works.size()], new ArrayList<>(), new ArrayList<>(), 0);
    int free = 0;
    int end = 0;
    for (int i = 0; i < order.length; i++) {
      int at = order[i];
      take(run, order, i, free);
      free = run.finish[at];
      end = Math.max(end, free + works.get(at).waitMinutes());
    }
    return new Run(run.start, run.finish, List.copyOf(run.rests), List.copyOf(run.held), end);
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
    for (int holding = holding(run, order, place, ready); holding >= 0; ) {
      run.held.add(new Lag(holding, at, works.get(holding).waitMinutes()));
      ready = dry(run, holding);
      awaited = holding;
      holding = holding(run, order, place, ready);
    }
    run.start[at] = day.start(ready, work);
    run.finish[at] = day.finish(run.start[at], work);
    int lost = day.workable(free, ready);
    if (awaited >= 0 && lost > 0) {
      run.rests.add(new Rest(at, free, ready, lost, awaited));
    }
  }

  private int dry(Run run, int work) {
    return run.finish[work] + works.get(work).waitMinutes();
  }

  /** What is next to free the clamps that a work finds too few of; none if there are enough. */
  private int holding(Run run, int[] order, int place, int time) {
    int wanted = Math.min(works.get(order[place]).clamps(), clamps);
    int left = clamps - wanted;
    int next = -1;
    for (int i = 0; i < place && wanted > 0; i++) {
      int each = order[i];
      if (works.get(each).clamps() > 0 && dry(run, each) > time) {
        left -= works.get(each).clamps();
        next = next < 0 || dry(run, each) < dry(run, next) ? each : next;
      }
    }
    return left < 0 ? next : -1;
  }
}
