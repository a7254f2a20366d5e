package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Network.Lag;

/**
 * The works of a plan in the order in which one maker does them: step by step, but that a coat goes
 * on between other steps as soon as the one before it is dry and hands are free.
 *
 * @param works each in one go: a step, or one coat of it
 * @param steps of each work, the place of its step in the plan
 * @param lags what passes between the works
 */
record Spells(List<Work> works, List<Integer> steps, List<Lag> lags) {
  Spells {
    works = List.copyOf(works);
    steps = List.copyOf(steps);
    lags = List.copyOf(lags);
  }

  static Spells of(BuildPlan plan, WorkDay day) {
    Spells inSteps = inSteps(plan);
    return inSteps.in(new Turns(day, inSteps).order());
  }

  /** Step by step, all coats of one before the next. */
  private static Spells inSteps(BuildPlan plan) {
    List<Work> works = new ArrayList<>();
    List<Integer> steps = new ArrayList<>();
    for (int i = 0; i < plan.steps().size(); i++) {
      for (Work work : works(plan.steps().get(i))) {
        works.add(work);
        steps.add(i);
      }
    }
    Spells bare = new Spells(works, steps, List.of());
    List<Lag> lags = new ArrayList<>(bare.betweenCoats());
    plan.precedence().forEach(each -> lags.add(bare.lag(each)));
    return new Spells(works, steps, lags);
  }

  private static List<Work> works(Step step) {
    List<Session> sessions = step.sessions();
    return sessions.size() == 1
        ? List.of(Work.of(step))
        : sessions.stream().map(Spells::coat).toList();
  }

  /** A coat keeps a wet edge, so it is done in one go. */
  private static Work coat(Session session) {
    return new Work(session.minutes(), session.waitMinutes(), true, 0);
  }

  private List<Lag> betweenCoats() {
    return IntStream.range(1, works.size())
        .filter(at -> steps.get(at - 1).equals(steps.get(at)))
        .mapToObj(at -> new Lag(at - 1, at, works.get(at - 1).waitMinutes()))
        .toList();
  }

  /** What needs a step dry waits for its last coat; the maker's own order for its first alone. */
  private Lag lag(Precedence each) {
    int after = steps.indexOf(each.after() - 1);
    int before =
        each.dry() ? steps.lastIndexOf(each.before() - 1) : steps.indexOf(each.before() - 1);
    return new Lag(before, after, Lag.minutes(each, works.get(before), works.get(after)));
  }

  private Spells in(List<Integer> order) {
    int[] place = new int[order.size()];
    IntStream.range(0, place.length).forEach(at -> place[order.get(at)] = at);
    return new Spells(
        order.stream().map(works::get).toList(),
        order.stream().map(steps::get).toList(),
        lags.stream()
            .map(lag -> new Lag(place[lag.before()], place[lag.after()], lag.minutes()))
            .toList());
  }

  /** The places of the works of a step. */
  List<Integer> of(int step) {
    return IntStream.range(0, works.size()).filter(at -> steps.get(at) == step).boxed().toList();
  }

  /** One maker who always takes what can be begun first. */
  private static final class Turns {
    private final WorkDay day;
    private final Spells spells;
    private final List<List<Lag>> needs = new ArrayList<>();
    private final int[] finish;
    private final boolean[] done;
    private final List<Integer> order = new ArrayList<>();
    private int free;

    /** The first work that is open, and the step begun last. */
    private int first;

    private int begun = -1;

    Turns(WorkDay day, Spells spells) {
      this.day = day;
      this.spells = spells;
      this.finish = new int[spells.works.size()];
      this.done = new boolean[finish.length];
      spells.works.forEach(work -> needs.add(new ArrayList<>()));
      spells.lags.forEach(lag -> needs.get(lag.after()).add(lag));
    }

    List<Integer> order() {
      while (order.size() < finish.length) {
        take(next());
      }
      return order;
    }

    private void take(int work) {
      finish[work] = day.finish(start(work), spells.works.get(work));
      free = finish[work];
      order.add(work);
      done[work] = true;
      begun = Math.max(begun, spells.steps.get(work));
      while (first < done.length && done[first]) {
        first++;
      }
    }

    /**
     * The coat or the step that can be begun first; a coat, if both can. Only works of steps that
     * have begun, and of the one that is next, are looked at.
     */
    private int next() {
      int best = -1;
      for (int at = first; at < done.length && spells.steps.get(at) <= begun + 1; at++) {
        if (!done[at] && isReady(at) && (best < 0 || start(at) < start(best))) {
          best = at;
        }
      }
      return best;
    }

    private boolean isReady(int work) {
      return needs.get(work).stream().allMatch(lag -> done[lag.before()]);
    }

    private int start(int work) {
      int ready =
          needs.get(work).stream()
              .mapToInt(lag -> finish[lag.before()] + lag.minutes())
              .max()
              .orElse(0);
      return day.start(Math.max(free, ready), spells.works.get(work));
    }
  }
}
