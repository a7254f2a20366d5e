package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.Schedule;
import storyrod.build.Schedule.Rest;
import storyrod.build.Schedule.Row;
import storyrod.drawing.Drawing;
import storyrod.drawing.Timeline;

/**
 * The work day by day: what it comes to, its drawings, and what can be done while something dries.
 *
 * @param waitsBreak whether that list begins a page, since it finds no room below the last drawing
 */
public record TimelinePages(
    String lead, String path, List<DrawingBox> drawings, List<Wait> waits, boolean waitsBreak) {
  /** What the page's last line takes below a drawing. */
  private static final double SPARE_MM = 2;

  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final double BELOW_TEXT_MM = 4;

  /** What of its room a first page fills that leaves some days to the next. */
  private static final double MOST_DAYS = 0.65;

  public TimelinePages {
    drawings = List.copyOf(drawings);
    waits = List.copyOf(waits);
  }

  /**
   * What a step leaves to dry.
   *
   * @param time how long, in words
   * @param meanwhile what can be done, in words
   */
  public record Wait(int step, String title, String time, String meanwhile) {}

  /** The work day by day; nothing where only some steps are chosen. */
  static TimelinePages of(PlanSet set, StepPages steps, Print print) {
    if (!print.chosen().whole()) {
      return new TimelinePages("", "", List.of(), List.of(), false);
    }
    Schedule schedule = set.schedule();
    Texts texts = print.texts();
    List<DrawingBox> boxes =
        drawings(set, print).stream()
            .map(each -> new DrawingBox(each.name(), each.widthMm(), each.heightMm(), each.scale()))
            .toList();
    List<Wait> waits =
        waiting(schedule)
            .map(row -> wait(row, schedule, title(steps, row.number()), texts))
            .toList();
    double first = boxes.size() == 1 ? aboveMm(set, print) : 1;
    return new TimelinePages(
        lead(schedule, texts),
        path(schedule, texts),
        boxes,
        waits,
        !hasRoom(first + boxes.getLast().heightMm(), schedule, print.paper()));
  }

  private static Stream<Row> waiting(Schedule schedule) {
    return schedule.steps().stream()
        .filter(row -> row.spells().stream().anyMatch(each -> each.dry() > each.finish()));
  }

  /** Whether the list of waits finds room below what fills a page so far. */
  private static boolean hasRoom(double filledMm, Schedule schedule, Paper paper) {
    double rows = waiting(schedule).count() + 1.0;
    return filledMm + TableHeights.H2_MM + rows * TableHeights.LINE_MM <= paper.roomMm();
  }

  /**
   * The drawings, the first of them below the texts. Where they leave the list no room on their one
   * page, the last days go over to the next page with it.
   */
  static List<Drawing> drawings(PlanSet set, Print print) {
    List<Drawing> usual = drawings(set, print, 1);
    double filled = aboveMm(set, print) + usual.getLast().heightMm();
    return usual.size() > 1 || hasRoom(filled, set.schedule(), print.paper())
        ? usual
        : drawings(set, print, MOST_DAYS);
  }

  private static List<Drawing> drawings(PlanSet set, Print print, double share) {
    Schedule schedule = set.schedule();
    Texts texts = print.texts();
    Paper paper = print.paper();
    double width = paper.textWidthMm();
    double above = aboveMm(set, print);
    double room = paper.roomMm() - SPARE_MM;
    IntFunction<String> stage =
        step -> StepPages.stageTitle(set.build().steps().get(step - 1).stage(), texts);
    return Timeline.of(
        schedule,
        stage,
        texts.words(),
        new Timeline.PaperRoom(width, share * (room - above), room));
  }

  /** What stands above the first drawing. */
  private static double aboveMm(PlanSet set, Print print) {
    double width = print.paper().textWidthMm();
    return 1
        + TableHeights.H1_MM
        + TableHeights.lead(lead(set.schedule(), print.texts()), width)
        + TEXT.heightMm(path(set.schedule(), print.texts()), width)
        + BELOW_TEXT_MM;
  }

  private static String lead(Schedule schedule, Texts texts) {
    String work = texts.duration(schedule.workMinutes());
    String day = texts.duration(schedule.day().minutes());
    String idle = texts.duration(schedule.idleMinutes());
    String after =
        schedule.days() == 1
            ? texts.say("timeline.after-one-day")
            : texts.say("timeline.after-days", schedule.days());
    return idle.isEmpty()
        ? texts.say("timeline.lead-busy", work, day, after)
        : texts.say("timeline.lead", work, day, after, idle);
  }

  private static String path(Schedule schedule, Texts texts) {
    return texts.say(
        "timeline.path", ranges(schedule.criticalPath(), texts), days(schedule.leastDays(), texts));
  }

  static String days(int days, Texts texts) {
    return days == 1 ? texts.say("time.one-day") : texts.say("time.days", days);
  }

  private static String title(StepPages steps, int number) {
    return steps.stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .filter(step -> step.number() == number)
        .map(step -> step.text().title())
        .findFirst()
        .orElseThrow();
  }

  private static Wait wait(Row row, Schedule schedule, String title, Texts texts) {
    List<Integer> steps = schedule.meanwhile(row);
    List<Rest> rests =
        schedule.rests().stream().filter(rest -> rest.awaited() == row.number()).toList();
    int idle = rests.stream().mapToInt(Rest::minutes).sum();
    List<Integer> ready =
        rests.stream().flatMap(rest -> rest.ready().stream()).distinct().sorted().toList();
    List<String> said = new ArrayList<>();
    if (!steps.isEmpty()) {
      said.add(named(steps, texts));
    }
    if (idle > 0 && !ready.isEmpty()) {
      said.add(texts.say("timeline.ahead", texts.duration(idle), named(ready, texts)));
    } else if (idle > 0) {
      String key = steps.isEmpty() ? "timeline.wait" : "timeline.then-wait";
      said.add(texts.say(key, texts.duration(idle)));
    } else if (steps.isEmpty()) {
      boolean isLast = row.dry() == schedule.elapsedMinutes();
      said.add(texts.say(isLast ? "timeline.done" : "timeline.overnight"));
    }
    String all = said.size() == 2 ? texts.say("timeline.both", said.toArray()) : said.getFirst();
    return new Wait(row.number(), title, drying(row, texts), all);
  }

  private static String named(List<Integer> steps, Texts texts) {
    return texts.say(steps.size() == 1 ? "timeline.step" : "timeline.steps", ranges(steps, texts));
  }

  /** How long each coat dries, equal ones together. */
  private static String drying(Row row, Texts texts) {
    Map<Integer, Integer> counts = new LinkedHashMap<>();
    row.spells().forEach(each -> counts.merge(each.dry() - each.finish(), 1, Integer::sum));
    return counts.entrySet().stream()
        .filter(each -> each.getKey() > 0)
        .map(each -> drying(each.getValue(), texts.duration(each.getKey()), texts))
        .collect(Collectors.joining(", "));
  }

  private static String drying(int count, String time, Texts texts) {
    return count == 1 ? time : texts.say("timeline.times", count, time);
  }

  /** Numbers with those that follow each other as a range. */
  private static String ranges(List<Integer> numbers, Texts texts) {
    List<List<Integer>> runs = new ArrayList<>();
    for (int each : numbers) {
      if (runs.isEmpty() || runs.getLast().getLast() + 1 != each) {
        runs.add(new ArrayList<>());
      }
      runs.getLast().add(each);
    }
    return runs.stream()
        .map(
            run ->
                switch (run.size()) {
                  case 1 -> run.getFirst().toString();
                  case 2 -> run.getFirst() + ", " + run.getLast();
                  default -> texts.say("timeline.range", run.getFirst(), run.getLast());
                })
        .collect(Collectors.joining(", "));
  }
}
