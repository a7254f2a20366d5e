package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Located;
import storyrod.description.ShopEntry;
import storyrod.description.SourceText;
import storyrod.description.Span;
import storyrod.description.StageEntry;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** Waits are filled where the needs allow it, and nothing else changes. */
class FillingTest {
  private static final Span AT = Span.startOf(new SourceText("project.yaml", "a: b\n"));

  private static ShopEntry shop() {
    Length none = Length.ZERO;
    return new ShopEntry(none, none, none, none, none, 20, 6);
  }

  private static Task task(int index, StageKey stage, int minutes, int wait, String own) {
    Operation operation =
        new Operation(
            stage == StageKey.TRIAL ? Verb.TEST : Verb.SIZE,
            "part-" + index,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            minutes,
            wait);
    Optional<StageEntry> entry =
        Optional.of(own)
            .filter(title -> !title.isEmpty())
            .map(title -> new StageEntry(new Located<>(title, AT), List.of(), java.util.Map.of()));
    return new Task(index, operation, stage, index, "batch " + index, entry);
  }

  private static Task task(int index, StageKey stage, int minutes, int wait) {
    return task(index, stage, minutes, wait, "");
  }

  /** Steps of one task each that never go on to another. */
  private static final class Plain implements Filling.Maker {
    @Override
    public List<Step> of(List<List<Task>> batches) {
      return IntStream.range(0, batches.size())
          .mapToObj(i -> step(i + 1, batches.get(i).getFirst()))
          .toList();
    }

    @Override
    public boolean goesOn(List<Task> batch, List<Task> next) {
      return false;
    }

    private static Step step(int number, Task task) {
      Stage stage =
          task.own()
              .map(own -> new Stage("own", Optional.of(own.title().value())))
              .orElseGet(() -> new Stage(task.stage().word(), Optional.empty()));
      return new Step(
          number,
          stage,
          List.of(task.operation()),
          List.of(),
          List.of(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Face.BOTTOM,
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          task.operation().minutes(),
          task.operation().waitMinutes());
    }
  }

  private static List<Task> filled(List<Task> tasks, List<Link> links) {
    return new Filling(new Plain(), links, shop())
        .of(tasks.stream().map(List::of).toList()).stream().map(List::getFirst).toList();
  }

  private static List<Integer> order(List<Task> tasks) {
    return tasks.stream().map(Task::index).toList();
  }

  private static Schedule schedule(List<Task> tasks, List<Link> links) {
    List<List<Task>> batches = tasks.stream().map(List::of).toList();
    List<Step> steps = new Plain().of(batches);
    return Schedule.of(new BuildPlan(steps, List.of(), Precedence.between(batches, links)), shop());
  }

  private static Link need(int before, int after) {
    return new Link(before, after, "rule");
  }

  @Test
  void whatDriesComesFirstInItsStage() {
    List<Task> tasks =
        List.of(
            task(0, StageKey.SIZING, 30, 0),
            task(1, StageKey.SIZING, 30, 0),
            task(2, StageKey.SIZING, 20, 0),
            task(3, StageKey.SIZING, 20, 120),
            task(4, StageKey.JOINTS, 30, 0));
    List<Link> links = List.of(need(2, 3), need(3, 4));
    assertEquals(List.of(2, 3, 0, 1, 4), order(filled(tasks, links)));
  }

  @Test
  void otherReadyWorkComesWhileGlueSets() {
    List<Task> tasks =
        List.of(
            task(0, StageKey.JOINTS, 30, 60),
            task(1, StageKey.JOINTS, 30, 0),
            task(2, StageKey.JOINTS, 60, 0));
    assertEquals(List.of(0, 2, 1), order(filled(tasks, List.of(need(0, 1)))));
  }

  @Test
  void stageIsTornOnlyForAnHourAndMore() {
    List<Link> links = List.of(need(0, 1));
    List<Task> little =
        List.of(
            task(0, StageKey.ASSEMBLY, 30, 100),
            task(1, StageKey.ASSEMBLY, 30, 0),
            task(2, StageKey.HARDWARE, 100, 0),
            task(3, StageKey.HARDWARE, 10, 0));
    assertEquals(List.of(0, 1, 2, 3), order(filled(little, links)));
    List<Task> much =
        List.of(
            task(0, StageKey.ASSEMBLY, 30, 130),
            task(1, StageKey.ASSEMBLY, 30, 0),
            task(2, StageKey.HARDWARE, 130, 0),
            task(3, StageKey.HARDWARE, 10, 0));
    assertEquals(List.of(0, 2, 1, 3), order(filled(much, links)));
  }

  /** It goes to between two stages, however many lie before it, and tears none. */
  @Test
  void aTrialOnWhichAllWaitsBeginsAsSoonAsItCan() {
    List<Task> tasks =
        List.of(
            task(0, StageKey.MILLING, 50, 0),
            task(1, StageKey.MILLING, 50, 0),
            task(2, StageKey.SIZING, 40, 0),
            task(3, StageKey.TRIAL, 20, 300),
            task(4, StageKey.FINISHING, 30, 0));
    List<Link> links = List.of(need(0, 3), need(1, 2), need(3, 4));
    assertEquals(List.of(0, 1, 3, 2, 4), order(filled(tasks, links)));
  }

  /** The trial decides the end either way; the wait after the work is better than one in it. */
  @Test
  void whereNoWaitCanBeSavedALateOneIsBetterThanAnEarlyOne() {
    List<Task> tasks =
        List.of(
            task(0, StageKey.TRIAL, 10, 5000),
            task(1, StageKey.JOINTS, 100, 0),
            task(2, StageKey.JOINTS, 30, 200),
            task(3, StageKey.JOINTS, 30, 0),
            task(4, StageKey.FINISHING, 30, 0));
    List<Link> links = List.of(need(2, 3), need(3, 4), need(0, 4));
    assertEquals(List.of(0, 2, 1, 3, 4), order(filled(tasks, links)));
  }

  @Test
  void aTrialIsNotPutOffToFillAWait() {
    List<Task> tasks =
        List.of(
            task(0, StageKey.TRIAL, 60, 300),
            task(1, StageKey.JOINTS, 30, 60, "Case"),
            task(2, StageKey.ASSEMBLY, 400, 0),
            task(3, StageKey.FINISHING, 30, 0));
    List<Link> links = List.of(need(1, 2), need(0, 3), need(2, 3));
    assertEquals(List.of(0, 1, 2, 3), order(filled(tasks, links)));
  }

  @Test
  void stageOfTheMakersOwnIsNeverTorn() {
    List<Link> links = List.of(need(0, 1));
    List<Task> tasks =
        List.of(
            task(0, StageKey.ASSEMBLY, 30, 400, "Case"),
            task(1, StageKey.ASSEMBLY, 30, 0, "Case"),
            task(2, StageKey.HARDWARE, 300, 0),
            task(3, StageKey.HARDWARE, 10, 0));
    assertEquals(List.of(0, 1, 2, 3), order(filled(tasks, links)));
  }

  @Test
  void ownOrderAsksForTheWorkAndNotForTheWait() {
    List<Task> tasks =
        List.of(task(0, StageKey.MILLING, 30, 300), task(1, StageKey.MILLING, 30, 0));
    assertEquals(30, schedule(tasks, List.of(new Link(0, 1, Link.OWN))).step(2).start());
    assertEquals(330, schedule(tasks, List.of(need(0, 1))).step(2).start());
  }

  private static List<Task> random(Random random, int size) {
    List<Task> tasks = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      StageKey stage = StageKey.values()[i * 3 / size];
      int wait = random.nextInt(3) == 0 ? random.nextInt(1500) : 0;
      String own = random.nextInt(12) == 0 ? "own " + stage : "";
      tasks.add(task(i, stage, 5 + random.nextInt(90), wait, own));
    }
    return tasks;
  }

  private static Set<String> ownParts(List<Task> tasks) {
    Set<String> parts = new LinkedHashSet<>();
    String last = "";
    for (Task each : tasks) {
      String own = each.own().map(entry -> entry.title().value()).orElse("");
      if (!own.isEmpty() && !own.equals(last)) {
        assertTrue(parts.add(own + order(tasks).indexOf(each.index())));
      }
      last = own;
    }
    return parts;
  }

  @Test
  void randomOrdersKeepTheirNeedsAndNeverEndLater() {
    Random random = new Random(20261130);
    int sooner = 0;
    for (int round = 0; round < 400; round++) {
      List<Task> tasks = random(random, 30);
      List<Link> links = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        int before = random.nextInt(29);
        links.add(need(before, before + 1 + random.nextInt(29 - before)));
      }
      List<Task> filled = filled(tasks, links);
      List<Integer> order = order(filled);
      assertEquals(order(tasks), order.stream().sorted().toList());
      links.forEach(
          each -> assertTrue(order.indexOf(each.earlier()) < order.indexOf(each.later())));
      assertTrue(ownParts(filled).size() <= ownParts(tasks).size());
      int before = schedule(tasks, links).elapsedMinutes();
      int after = schedule(filled, links).elapsedMinutes();
      assertTrue(after <= before);
      assertEquals(order, order(filled(tasks, links)));
      sooner += after < before ? 1 : 0;
    }
    assertTrue(sooner > 60, "waits must be filled now and then: " + sooner);
  }

  @Test
  void oneMakerStartsWhenHandsAndNeedsAllow() {
    Random random = new Random(20261131);
    for (int round = 0; round < 100; round++) {
      List<Task> tasks = random(random, 20);
      List<Link> links = new ArrayList<>();
      for (int i = 0; i < 20; i++) {
        int before = random.nextInt(19);
        links.add(need(before, before + 1 + random.nextInt(19 - before)));
      }
      Schedule schedule = schedule(tasks, links);
      int free = 0;
      for (Schedule.Row row : schedule.steps()) {
        int ready = free;
        for (Precedence need : row.needs()) {
          ready = Math.max(ready, schedule.step(need.before()).dry());
        }
        assertEquals(schedule.day().workable(ready), schedule.day().workable(row.start()));
        assertTrue(
            row.start() >= ready && row.alone().earliestStart() >= row.free().earliestStart());
        free = row.finish();
      }
      int busy = schedule.workMinutes() + schedule.idleMinutes();
      assertEquals(schedule.day().workable(free), busy);
    }
  }
}
