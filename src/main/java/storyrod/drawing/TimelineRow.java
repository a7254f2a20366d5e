package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import storyrod.build.Schedule;
import storyrod.build.Schedule.Row;
import storyrod.build.Schedule.Spell;

/**
 * What happens on a day of work, or on each of several days that are alike. Stretches are minutes
 * from the start of the day's work.
 *
 * @param first the number of the first day
 * @param last the number of the last day
 * @param worked the steps that are worked on, as the day goes: a coat may come between later steps
 * @param idle where the hands have to wait; the step is the one that is waited for
 * @param drying what dries, the step being the one that left it
 */
record TimelineRow(
    int first, int last, List<Stretch> worked, List<Stretch> idle, List<Stretch> drying) {
  private static final int CLOCK = 24 * 60;

  TimelineRow {
    worked = List.copyOf(worked);
    idle = List.copyOf(idle);
    drying = List.copyOf(drying);
  }

  /** A part of a day that belongs to a step. */
  record Stretch(int step, int from, int to, boolean critical) {}

  static List<TimelineRow> of(Schedule schedule) {
    List<TimelineRow> rows = new ArrayList<>();
    for (int day = 1; day <= schedule.days(); day++) {
      TimelineRow row = of(schedule, day);
      if (!rows.isEmpty() && rows.getLast().isLike(row)) {
        TimelineRow before = rows.removeLast();
        row = new TimelineRow(before.first, day, row.worked, row.idle, row.drying);
      }
      rows.add(row);
    }
    return rows;
  }

  private static TimelineRow of(Schedule schedule, int day) {
    List<Stretch> worked = new ArrayList<>();
    List<Stretch> drying = new ArrayList<>();
    List<Stretch> idle = new ArrayList<>();
    int from = (day - 1) * CLOCK;
    int to = from + schedule.day().minutes();
    for (Row row : schedule.steps()) {
      boolean critical = row.free().critical();
      for (Spell spell : row.spells()) {
        add(worked, new Stretch(row.number(), spell.start(), spell.finish(), critical), from, to);
        add(drying, new Stretch(row.number(), spell.finish(), spell.dry(), critical), from, to);
      }
    }
    schedule
        .rests()
        .forEach(
            rest ->
                add(idle, new Stretch(rest.awaited(), rest.from(), rest.to(), false), from, to));
    worked.sort(Comparator.comparingInt(Stretch::from));
    return new TimelineRow(day, day, worked, idle, drying);
  }

  /** Adds what of a stretch on the clock lies between two times. */
  private static void add(List<Stretch> stretches, Stretch all, int from, int to) {
    int start = Math.max(all.from, from);
    int end = Math.min(all.to, to);
    if (end > start) {
      stretches.add(new Stretch(all.step, start - from, end - from, all.critical));
    }
  }

  private boolean isLike(TimelineRow next) {
    return worked.isEmpty()
        && next.worked.isEmpty()
        && idle.equals(next.idle)
        && drying.equals(next.drying);
  }
}
