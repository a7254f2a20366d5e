package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.build.Precedence;
import storyrod.build.Schedule;
import storyrod.build.Schedule.Rest;
import storyrod.build.Schedule.Row;
import storyrod.build.Schedule.Spell;
import storyrod.build.Times;

/**
 * The schedule in {@code plan.json}. Times are minutes on the clock from the start of work on the
 * first day; a day has 1440 of them, of which the first are worked. What a step {@code needs} has
 * to be done and dry, what it {@code follows} has to be done. {@code earliest} and {@code latest}
 * hold for as many hands as can be used, {@code start} and {@code finish} for one maker who takes
 * the steps in their order; {@code float} and {@code spare} are the working minutes that a step may
 * start later in either case without moving the end; its {@code spells} are what is done in one go,
 * such as each coat of a finish. {@code critical} steps decide the end.
 */
final class ScheduleJson {
  private ScheduleJson() {}

  static Map<String, Object> of(Schedule schedule) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("day_minutes", schedule.day().minutes());
    json.put("work_minutes", schedule.workMinutes());
    json.put("elapsed_minutes", schedule.elapsedMinutes());
    json.put("days", schedule.days());
    json.put("idle_minutes", schedule.idleMinutes());
    json.put("least_elapsed_minutes", schedule.leastMinutes());
    json.put("least_days", schedule.leastDays());
    json.put("critical_path", schedule.criticalPath());
    json.put("idle", schedule.rests().stream().map(ScheduleJson::rest).toList());
    return json;
  }

  private static Map<String, Object> rest(Rest rest) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("before", rest.before());
    json.put("waits_for", rest.awaited());
    json.put("from", rest.from());
    json.put("to", rest.to());
    json.put("minutes", rest.minutes());
    return json;
  }

  static Map<String, Object> step(Row row) {
    Times free = row.free();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("needs", numbers(row, true));
    json.put("follows", numbers(row, false));
    json.put("earliest_start", free.earliestStart());
    json.put("earliest_finish", free.earliestFinish());
    json.put("latest_start", free.latestStart());
    json.put("latest_finish", free.latestFinish());
    json.put("float", free.floatMinutes());
    json.put("critical", free.critical());
    json.put("start", row.start());
    json.put("finish", row.finish());
    json.put("dry", row.dry());
    json.put("spells", row.spells().stream().map(ScheduleJson::spell).toList());
    json.put("spare", row.alone().floatMinutes());
    return json;
  }

  private static Map<String, Object> spell(Spell spell) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("start", spell.start());
    json.put("finish", spell.finish());
    json.put("dry", spell.dry());
    return json;
  }

  private static List<Integer> numbers(Row row, boolean dry) {
    return row.needs().stream().filter(each -> each.dry() == dry).map(Precedence::before).toList();
  }
}
