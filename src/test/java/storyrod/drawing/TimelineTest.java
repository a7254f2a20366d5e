package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.build.Schedule;
import storyrod.build.Schedule.Rest;
import storyrod.build.Schedule.Row;
import storyrod.build.Schedule.Spell;
import storyrod.build.Times;
import storyrod.build.WorkDay;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.Tone;
import storyrod.words.Words;

/** The drawn timeline: every step is on it, no text touches another, and pages are not overrun. */
class TimelineTest {
  private static final Timeline.PaperRoom PAPER = new Timeline.PaperRoom(180, 170, 220);
  private static final int CLOCK = 24 * 60;

  private static Row row(int number, int start, int finish, int dry, boolean critical) {
    Times times = new Times(start, finish, start, finish, critical ? 0 : 30, critical);
    return new Row(number, List.of(), times, times, dry);
  }

  /** Steps one after the other within days of eight hours; some have to dry. */
  private static Schedule random(Random random) {
    List<Row> rows = new ArrayList<>();
    List<Rest> rests = new ArrayList<>();
    int at = 0;
    int end = 0;
    for (int number = 1; number <= 40; number++) {
      int minutes = 3 + random.nextInt(random.nextInt(4) == 0 ? 100 : 20);
      if (at % CLOCK + minutes > 480) {
        at = (at / CLOCK + 1) * CLOCK;
      }
      int dry = random.nextInt(5) == 0 ? random.nextInt(3 * CLOCK) : 0;
      rows.add(row(number, at, at + minutes, at + minutes + dry, random.nextBoolean()));
      at += minutes;
      end = Math.max(end, at + dry);
    }
    return new Schedule(WorkDay.ofHours(8), rows, rests, List.of(), 1, end);
  }

  private static String stage(int step) {
    return "Stage number " + step / 3;
  }

  private static List<Text> texts(Drawing drawing) {
    return drawing.elements().stream()
        .filter(Text.class::isInstance)
        .map(Text.class::cast)
        .toList();
  }

  /** A coat given between later steps, as on the bench's fourth day, pushed their numbers away. */
  @Test
  void theNumberOfANarrowBarStandsAboveIt() {
    Times whole = new Times(0, 475, 0, 475, 0, true);
    List<Spell> coats = List.of(new Spell(0, 60, 60), new Spell(470, 475, 475));
    List<Row> rows =
        List.of(
            new Row(1, List.of(), whole, whole, coats),
            row(2, 60, 65, 65, false),
            row(3, 65, 400, 400, false));
    Schedule schedule = new Schedule(WorkDay.ofHours(8), rows, List.of(), List.of(), 1, 475);
    Drawing day = Timeline.of(schedule, TimelineTest::stage, Words.ENGLISH, PAPER).getFirst();
    double wanted = 21 + (PAPER.widthMm() - 21.5) * 62.5 / 480;
    Text number =
        texts(day).stream().filter(text -> text.text().equals("2")).findFirst().orElseThrow();
    assertEquals(wanted, number.at().x(), 2);
  }

  @Test
  void noTextTouchesAnotherOrLeavesThePage() {
    Random random = new Random(20261132);
    for (int round = 0; round < 60; round++) {
      List<Drawing> drawings =
          Timeline.of(random(random), TimelineTest::stage, Words.ENGLISH, PAPER);
      assertTrue(drawings.getFirst().heightMm() <= PAPER.firstMm());
      for (Drawing drawing : drawings) {
        assertTrue(drawing.heightMm() <= PAPER.nextMm());
        List<PlacedText> placed = texts(drawing).stream().map(PlacedText::of).toList();
        for (int i = 0; i < placed.size(); i++) {
          PlacedText text = placed.get(i);
          assertTrue(text.left() >= 0 && text.right() <= PAPER.widthMm(), text::toString);
          assertTrue(text.top() >= 0 && text.bottom() <= drawing.heightMm(), text::toString);
          placed
              .subList(i + 1, placed.size())
              .forEach(other -> assertFalse(text.overlaps(other), text + " on " + other));
        }
      }
    }
  }

  private static Schedule small() {
    return new Schedule(
        WorkDay.ofHours(8),
        List.of(
            row(1, 0, 120, 120 + 3 * CLOCK, true),
            row(2, 120, 240, 240, false),
            row(3, 120 + 3 * CLOCK, 240 + 3 * CLOCK, 240 + 3 * CLOCK, true)),
        List.of(new Rest(3, 240, 120 + 3 * CLOCK, 1320, 1)),
        List.of(),
        360,
        240 + 3 * CLOCK);
  }

  @Test
  void idleDaysThatAreAlikeAreOneRow() {
    List<TimelineRow> rows = TimelineRow.of(small());
    assertEquals(
        List.of("1-1", "2-3", "4-4"),
        rows.stream().map(row -> row.first() + "-" + row.last()).toList());
    assertEquals(List.of(1, 2), rows.get(0).worked().stream().map(each -> each.step()).toList());
    assertEquals(List.of(3), rows.get(2).worked().stream().map(each -> each.step()).toList());
    assertEquals(480, rows.get(1).idle().getFirst().to());
    assertEquals(120, rows.get(2).drying().getFirst().to());
  }

  @Test
  void whatDecidesTheEndHasALineOfItsOwnInBlack() {
    List<Drawing> drawings = Timeline.of(small(), step -> "Case", Words.ENGLISH, PAPER);
    List<Element> elements = drawings.getFirst().elements();
    long chains =
        elements.stream()
            .filter(each -> each instanceof Area area && area.tone() == Tone.INK)
            .count();
    // the legend, two steps, and what dries in three rows
    assertEquals(1 + 2 + 3, chains);
    List<String> texts = texts(drawings.getFirst()).stream().map(Text::text).toList();
    assertTrue(texts.containsAll(List.of("1", "2", "3", "Day 1", "Days 2–3", "Day 4", "1 dries")));
    assertEquals(2, texts.stream().filter("Case"::equals).count());
  }
}
