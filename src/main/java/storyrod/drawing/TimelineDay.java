package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import storyrod.build.WorkDay;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.TimelineRow.Stretch;
import storyrod.words.Words;

/** A row of the timeline: stages, numbers, bars, and bands for what dries, from top to bottom. */
final class TimelineDay {
  static final double LABEL_MM = 21;
  private static final double EDGE_MM = 0.5;
  private static final double STAGE_MM = 3.6;
  private static final double NUMBER_MM = 3.6;
  private static final double BAR_MM = 5.5;
  private static final double CHAIN_MM = 1;
  private static final double BAND_MM = 3.6;
  private static final double LANE_MM = 4.9;
  private static final double BELOW_MM = 2.6;
  private static final double APART_MM = 2;
  private static final double BESIDE_MM = 0.5;

  private final TimelineRow row;
  private final WorkDay day;
  private final IntFunction<String> stage;
  private final Words words;
  private final double widthMm;
  private final List<Placed> stages;
  private final List<List<Stretch>> lanes = new ArrayList<>();

  /** A stage's title: where its first step of the day starts, and how many lines up it stands. */
  private record Placed(String title, double x, double textX, int line) {}

  TimelineDay(
      TimelineRow row, WorkDay day, IntFunction<String> stage, Words words, double widthMm) {
    this.row = row;
    this.day = day;
    this.stage = stage;
    this.words = words;
    this.widthMm = widthMm;
    this.stages = stages();
    row.drying().forEach(this::intoLane);
  }

  /** The width that a day's hours take. */
  static double roomMm(double widthMm) {
    return widthMm - LABEL_MM - EDGE_MM;
  }

  double heightMm() {
    return barsMm() + BAR_MM + CHAIN_MM + lanes.size() * LANE_MM + 1 + BELOW_MM;
  }

  /** From the top of the row to its bars. */
  private double barsMm() {
    int lines = stages.stream().mapToInt(each -> each.line() + 1).max().orElse(0);
    boolean hasNumbers = row.worked().stream().anyMatch(each -> !holds(each, number(each)));
    return lines * STAGE_MM + (hasNumbers ? NUMBER_MM : 0);
  }

  List<Element> at(double top) {
    List<Element> elements = new ArrayList<>();
    double y = top + barsMm();
    elements.add(new Text(TextStyle.MARK, new At(0, y + 4), Anchor.START, true, days()));
    row.idle().forEach(each -> idle(elements, each, y));
    row.worked().forEach(each -> bar(elements, each, y));
    numbers(elements, y);
    titles(elements, top, y);
    for (int lane = 0; lane < lanes.size(); lane++) {
      double at = y + BAR_MM + CHAIN_MM + 1 + lane * LANE_MM;
      lanes.get(lane).forEach(each -> band(elements, each, at));
    }
    return elements;
  }

  private String days() {
    return row.first() == row.last()
        ? words.say("timeline.day", row.first())
        : words.say("timeline.days", row.first(), row.last());
  }

  private double x(int minute) {
    return LABEL_MM + roomMm(widthMm) * minute / day.minutes();
  }

  private double width(Stretch stretch) {
    return x(stretch.to()) - x(stretch.from());
  }

  private static String number(Stretch stretch) {
    return Integer.toString(stretch.step());
  }

  private static double width(String text) {
    return TextSetting.of(TextStyle.NOTE, text).width();
  }

  private boolean holds(Stretch stretch, String text) {
    return width(text) + 2 * BESIDE_MM <= width(stretch);
  }

  private void bar(List<Element> elements, Stretch stretch, double y) {
    At corner = new At(x(stretch.from()), y);
    elements.add(area(stretch.critical() ? Tone.SIDE : Tone.WHITE, corner, width(stretch), BAR_MM));
    elements.add(frame(Role.THIN, corner, width(stretch), BAR_MM));
    if (stretch.critical()) {
      elements.add(chain(corner.plus(0, BAR_MM), width(stretch)));
    }
    if (holds(stretch, number(stretch))) {
      elements.add(note(corner.plus(width(stretch) / 2, 3.7), Anchor.MIDDLE, number(stretch)));
    }
  }

  private void idle(List<Element> elements, Stretch stretch, double y) {
    At corner = new At(x(stretch.from()), y);
    elements.add(frame(Role.HIDDEN, corner, width(stretch), BAR_MM));
    fitting(stretch, words.say("timeline.idle", stretch.step()), words.say("timeline.idle.short"))
        .ifPresent(
            text -> elements.add(note(corner.plus(width(stretch) / 2, 3.7), Anchor.MIDDLE, text)));
  }

  private void band(List<Element> elements, Stretch stretch, double y) {
    At corner = new At(x(stretch.from()), y);
    elements.add(area(Tone.FRONT, corner, width(stretch), BAND_MM));
    elements.add(frame(Role.THIN, corner, width(stretch), BAND_MM));
    if (stretch.critical()) {
      elements.add(chain(corner.plus(0, BAND_MM), width(stretch)));
    }
    fitting(stretch, words.say("timeline.dries", stretch.step()), number(stretch))
        .ifPresent(text -> elements.add(note(corner.plus(1, 2.7), Anchor.START, text)));
  }

  private java.util.Optional<String> fitting(Stretch stretch, String... texts) {
    return java.util.Arrays.stream(texts).filter(text -> holds(stretch, text)).findFirst();
  }

  /** The numbers of narrow bars stand above them, those of neighbours as one range. */
  private void numbers(List<Element> elements, double y) {
    List<Stretch> group = new ArrayList<>();
    double free = LABEL_MM;
    for (Stretch each : row.worked()) {
      boolean isNarrow = !holds(each, number(each));
      boolean goesOn = !group.isEmpty() && group.getLast().to() == each.from();
      if (!group.isEmpty() && !(isNarrow && goesOn)) {
        free = label(elements, group, y, free);
        group.clear();
      }
      if (isNarrow) {
        group.add(each);
      }
    }
    if (!group.isEmpty()) {
      label(elements, group, y, free);
    }
  }

  private double label(List<Element> elements, List<Stretch> group, double y, double free) {
    String first = number(group.getFirst());
    String text =
        group.size() == 1 ? first : words.say("timeline.range", first, number(group.getLast()));
    double middle = (x(group.getFirst().from()) + x(group.getLast().to())) / 2;
    double most = widthMm - EDGE_MM - width(text);
    double left = Math.min(Math.max(middle - width(text) / 2, free), most);
    elements.add(note(new At(left, y - 1), Anchor.START, text));
    return left + width(text) + APART_MM;
  }

  /** From the last to the first, so that a title goes above the later ones that it would touch. */
  private List<Placed> stages() {
    List<Placed> placed = new ArrayList<>();
    String last = "";
    for (Stretch each : row.worked()) {
      String title = stage.apply(each.step());
      if (!title.equals(last)) {
        double x = x(each.from());
        double right = widthMm - EDGE_MM - width(title);
        placed.add(new Placed(title, x, Math.min(x, right), 0));
      }
      last = title;
    }
    for (int i = placed.size() - 2; i >= 0; i--) {
      Placed title = placed.get(i);
      double end = title.textX() + width(title.title()) + APART_MM;
      int line =
          placed.subList(i + 1, placed.size()).stream()
              .filter(later -> Math.min(later.textX(), later.x()) < end)
              .mapToInt(later -> later.line() + 1)
              .max()
              .orElse(0);
      placed.set(i, new Placed(title.title(), title.x(), title.textX(), line));
    }
    return placed;
  }

  private void titles(List<Element> elements, double top, double y) {
    int lines = stages.stream().mapToInt(each -> each.line() + 1).max().orElse(0);
    for (Placed each : stages) {
      double base = top + (lines - each.line()) * STAGE_MM - 1;
      elements.add(note(new At(each.textX(), base), Anchor.START, each.title()));
      boolean isClear =
          stages.stream()
              .noneMatch(
                  other ->
                      other.line() < each.line()
                          && other.textX() - 1 < each.x()
                          && each.x() < other.textX() + width(other.title()) + 1);
      if (each.line() > 0 && isClear) {
        double to = top + lines * STAGE_MM - 0.6;
        elements.add(
            new Line(Role.DIMENSION, List.of(new At(each.x(), base + 0.9), new At(each.x(), to))));
      }
    }
  }

  private void intoLane(Stretch stretch) {
    for (List<Stretch> lane : lanes) {
      if (lane.getLast().to() <= stretch.from()) {
        lane.add(stretch);
        return;
      }
    }
    lanes.add(new ArrayList<>(List.of(stretch)));
  }

  private static Text note(At at, Anchor anchor, String text) {
    return new Text(TextStyle.NOTE, at, anchor, true, text);
  }

  static Area area(Tone tone, At corner, double width, double height) {
    return new Area(tone, List.of(corners(corner, width, height)));
  }

  static Line frame(Role role, At corner, double width, double height) {
    List<At> round = new ArrayList<>(corners(corner, width, height));
    round.add(corner);
    return new Line(role, round);
  }

  /** The black line under what decides the end. */
  static Area chain(At corner, double width) {
    return area(Tone.INK, corner, width, CHAIN_MM);
  }

  private static List<At> corners(At corner, double width, double height) {
    return List.of(
        corner, corner.plus(width, 0), corner.plus(width, height), corner.plus(0, height));
  }
}
