package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.build.Network.Lag;
import storyrod.build.OneMaker.Run;
import storyrod.description.ShopEntry;

/**
 * When each step of a plan is done: how early and how late it can be by what it needs alone, and
 * when one maker who follows the numbers comes to it. Times are minutes on the clock from the start
 * of work on the first day.
 *
 * @param steps in their order
 * @param rests when the maker's hands have to wait
 * @param off whose clamps come off before which step
 * @param workMinutes of all steps
 * @param elapsedMinutes until one maker has done all and it is dry
 */
public record Schedule(
    WorkDay day,
    List<Row> steps,
    List<Rest> rests,
    List<Off> off,
    int workMinutes,
    int elapsedMinutes) {
  public Schedule {
    steps = List.copyOf(steps);
    rests = List.copyOf(rests);
    off = List.copyOf(off);
  }

  /**
   * A step in time.
   *
   * @param needs what has to come before it
   * @param free by what it needs alone, with as many hands as can be used
   * @param alone by the order of one maker
   * @param spells of one maker, one after the other: each coat of a finish, and of any other step
   *     one
   */
  public record Row(
      int number, List<Precedence> needs, Times free, Times alone, List<Spell> spells) {
    public Row {
      needs = List.copyOf(needs);
      spells = List.copyOf(spells);
    }

    /** A step that is done in one go. */
    public Row(int number, List<Precedence> needs, Times free, Times alone, int dry) {
      this(
          number,
          needs,
          free,
          alone,
          List.of(new Spell(alone.earliestStart(), alone.earliestFinish(), dry)));
    }

    /** When what it leaves to dry has waited, or cured where a step waits for that. */
    public int dry() {
      return spells.getLast().dry();
    }

    /** When one maker starts it. */
    public int start() {
      return alone.earliestStart();
    }

    public int finish() {
      return alone.earliestFinish();
    }
  }

  /**
   * Work in one go.
   *
   * @param dry when what it leaves to dry has waited
   */
  public record Spell(int start, int finish, int dry) {
    private boolean driesDuring(Spell other) {
      return other.start < dry && other.finish > finish;
    }
  }

  /**
   * Hands that have nothing to do before a step.
   *
   * @param minutes of working time that pass so
   * @param awaited the number of the step that dries or holds the clamps
   * @param ready the numbers of later steps that could be taken meanwhile
   */
  public record Rest(int before, int from, int to, int minutes, int awaited, List<Integer> ready) {
    public Rest {
      ready = List.copyOf(ready);
    }

    /** A rest in which no later step could be taken. */
    public Rest(int before, int from, int to, int minutes, int awaited) {
      this(before, from, to, minutes, awaited, List.of());
    }
  }

  /** The clamps of one step, by its number, that come off before another. */
  public record Off(int glued, int before) {}

  /** The schedule of a plan in a shop. */
  public static Schedule of(BuildPlan plan, ShopEntry shop) {
    WorkDay day = WorkDay.ofHours(shop.hoursPerDay());
    Spells spells = Spells.of(plan, day);
    List<Work> works = spells.works();
    int[] order = IntStream.range(0, works.size()).toArray();
    OneMaker maker = new OneMaker(day, shop.clamps(), works, spells.lags());
    Run run = maker.run(order);
    List<Times> free = new Network(day, works, spells.lags()).times();
    List<Times> alone = new Network(day, works, withHands(spells.lags(), run)).times();
    List<Row> rows = new ArrayList<>();
    for (int step = 0; step < plan.steps().size(); step++) {
      int number = step + 1;
      List<Integer> places = spells.of(step);
      rows.add(
          new Row(
              number,
              plan.precedence().stream().filter(each -> each.after() == number).toList(),
              together(places.stream().map(free::get).toList()),
              together(places.stream().map(alone::get).toList()),
              places.stream().map(at -> spell(works, run, at)).toList()));
    }
    return new Schedule(
        day,
        rows,
        run.rests().stream()
            .map(each -> rest(each, spells.steps(), maker.ready(run, each)))
            .toList(),
        Arrays.stream(order)
            .filter(at -> run.offBefore()[at] >= 0)
            .mapToObj(at -> off(at, run.offBefore()[at], spells.steps()))
            .toList(),
        works.stream().mapToInt(Work::minutes).sum(),
        run.end());
  }

  /** From the first of a step's works to its last; what moves the first later moves them all. */
  private static Times together(List<Times> times) {
    Times first = times.getFirst();
    Times last = times.getLast();
    return new Times(
        first.earliestStart(),
        last.earliestFinish(),
        first.latestStart(),
        last.latestFinish(),
        first.floatMinutes(),
        times.stream().anyMatch(Times::critical));
  }

  private static Spell spell(List<Work> works, Run run, int at) {
    return new Spell(run.start()[at], run.finish()[at], run.finish()[at] + waiting(works, run, at));
  }

  /** How long a work waits: until it is dry, or cured where a later one had to wait for that. */
  private static int waiting(List<Work> works, Run run, int at) {
    int cured =
        run.held().stream()
            .filter(lag -> lag.before() == at && works.get(at).keepsOff(works.get(lag.after())) > 0)
            .mapToInt(Lag::minutes)
            .max()
            .orElse(0);
    return Math.max(works.get(at).waitMinutes(), cured);
  }

  private static Rest rest(OneMaker.Rest rest, List<Integer> steps, List<Integer> ready) {
    return new Rest(
        steps.get(rest.work()) + 1,
        rest.from(),
        rest.to(),
        rest.minutes(),
        steps.get(rest.awaited()) + 1,
        ready.stream().map(at -> steps.get(at) + 1).distinct().toList());
  }

  private static Off off(int glued, int before, List<Integer> steps) {
    return new Off(steps.get(glued) + 1, steps.get(before) + 1);
  }

  /** Also that the hands take one step after the other, and wait for clamps. */
  private static List<Lag> withHands(List<Lag> lags, Run run) {
    List<Lag> all = new ArrayList<>(lags);
    all.addAll(run.held());
    for (int i = 1; i < run.start().length; i++) {
      all.add(new Lag(i - 1, i, 0));
    }
    return all;
  }

  public Row step(int number) {
    return steps.get(number - 1);
  }

  /** The days on which something happens, also if it only dries. */
  public int days() {
    return elapsedMinutes == 0 ? 0 : day.day(elapsedMinutes - 1);
  }

  /** The least number of days, with as many hands as can be used. */
  public int leastDays() {
    return leastMinutes() == 0 ? 0 : day.day(leastMinutes() - 1);
  }

  /** How long it takes at least, with as many hands as can be used. */
  public int leastMinutes() {
    return steps.stream()
        .mapToInt(row -> row.free().earliestFinish() + row.dry() - row.finish())
        .max()
        .orElse(0);
  }

  /** The working time in which the maker's hands have to wait. */
  public int idleMinutes() {
    return rests.stream().mapToInt(Rest::minutes).sum();
  }

  /** The numbers of the steps that decide the end, whoever helps. */
  public List<Integer> criticalPath() {
    return steps.stream().filter(row -> row.free().critical()).map(Row::number).toList();
  }

  /** The numbers of the steps that are worked on while what a step leaves dries. */
  public List<Integer> meanwhile(Row drying) {
    return steps.stream()
        .filter(row -> row.number() != drying.number())
        .filter(
            row ->
                row.spells().stream()
                    .anyMatch(
                        spell -> drying.spells().stream().anyMatch(wet -> wet.driesDuring(spell))))
        .map(Row::number)
        .toList();
  }
}
