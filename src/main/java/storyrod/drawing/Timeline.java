package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import storyrod.build.Schedule;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.words.Words;

/**
 * The work day by day: a row for each day, with a bar for each step, what dries below it, and a
 * black line under what decides the end.
 */
public final class Timeline {
  private static final double HEAD_MM = 7;
  private static final double LEGEND_MM = 8;
  private static final double SWATCH_MM = 8;
  private static final double BETWEEN_MM = 5;
  private static final int HOUR = 60;

  private final Schedule schedule;
  private final IntFunction<String> stage;
  private final Words words;
  private final double widthMm;

  private Timeline(Schedule schedule, IntFunction<String> stage, Words words, double widthMm) {
    this.schedule = schedule;
    this.stage = stage;
    this.words = words;
    this.widthMm = widthMm;
  }

  /**
   * The drawings of a schedule, as many as pages are needed.
   *
   * @param stage the title of the stage of a step, by its number
   * @param paper the width of each, the height of the first, and that of each further one
   */
  public static List<Drawing> of(
      Schedule schedule, IntFunction<String> stage, Words words, PaperRoom paper) {
    return new Timeline(schedule, stage, words, paper.widthMm()).drawings(paper);
  }

  /** How much room drawings have that go over several pages, in mm. */
  public record PaperRoom(double widthMm, double firstMm, double nextMm) {}

  private List<Drawing> drawings(PaperRoom paper) {
    List<Drawing> drawings = new ArrayList<>();
    List<Element> elements = new ArrayList<>(legend());
    double at = LEGEND_MM + HEAD_MM;
    hours(elements, at);
    boolean isEmpty = true;
    for (TimelineRow row : TimelineRow.of(schedule)) {
      TimelineDay day = new TimelineDay(row, schedule.day(), stage, words, widthMm);
      double room = drawings.isEmpty() ? paper.firstMm() : paper.nextMm();
      if (!isEmpty && at + day.heightMm() > room) {
        drawings.add(drawing(drawings.size() + 1, elements, at));
        elements = new ArrayList<>();
        at = HEAD_MM;
        hours(elements, at);
      }
      elements.addAll(day.at(at));
      at += day.heightMm();
      isEmpty = false;
    }
    drawings.add(drawing(drawings.size() + 1, elements, at));
    return drawings;
  }

  private Drawing drawing(int number, List<Element> elements, double heightMm) {
    return new Drawing("timeline-" + number, widthMm, heightMm, Optional.empty(), elements);
  }

  /** The hours of a day along a line. */
  private void hours(List<Element> elements, double y) {
    double left = TimelineDay.LABEL_MM;
    double perHour = TimelineDay.roomMm(widthMm) * HOUR / schedule.day().minutes();
    int hours = schedule.day().minutes() / HOUR;
    int step = hours > 12 ? 3 : 1;
    elements.add(
        new Line(Role.THIN, List.of(new At(left, y - 2), new At(left + hours * perHour, y - 2))));
    for (int hour = 0; hour <= hours; hour += step) {
      At tick = new At(left + hour * perHour, y - 2);
      elements.add(new Line(Role.THIN, List.of(tick, tick.plus(0, -1))));
      Anchor anchor = hour == 0 ? Anchor.START : hour == hours ? Anchor.END : Anchor.MIDDLE;
      elements.add(
          new Text(
              TextStyle.SMALL, tick.plus(0, -1.8), anchor, true, words.say("time.hours", hour)));
    }
  }

  private List<Element> legend() {
    List<Element> elements = new ArrayList<>();
    double x = 0;
    x = swatch(elements, x, "timeline.legend.critical", Tone.SIDE, true);
    x = swatch(elements, x, "timeline.legend.step", Tone.WHITE, false);
    x = swatch(elements, x, "timeline.legend.dries", Tone.FRONT, false);
    At left = new At(x, 1);
    elements.add(TimelineDay.frame(Role.HIDDEN, left, SWATCH_MM, 3.4));
    elements.add(label(left, "timeline.legend.idle"));
    return elements;
  }

  private double swatch(
      List<Element> elements, double x, String key, Tone tone, boolean isCritical) {
    At corner = new At(x, 1);
    elements.add(TimelineDay.area(tone, corner, SWATCH_MM, 3.4));
    elements.add(TimelineDay.frame(Role.THIN, corner, SWATCH_MM, 3.4));
    if (isCritical) {
      elements.add(TimelineDay.chain(corner.plus(0, 3.4), SWATCH_MM));
    }
    Text label = label(corner, key);
    elements.add(label);
    return PlacedText.of(label).right() + BETWEEN_MM;
  }

  private Text label(At corner, String key) {
    return new Text(
        TextStyle.NOTE, corner.plus(SWATCH_MM + 1.5, 2.8), Anchor.START, true, words.say(key));
  }
}
