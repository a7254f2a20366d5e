package storyrod.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Need;
import storyrod.build.rule.Rules;

/** What comes before what, from operations down to the tasks that are put into steps. */
final class Scheduling {
  private Scheduling() {}

  /** A scheduler that knows all tasks, the needs between them and the maker's own order. */
  static Scheduler of(List<Task> tasks, List<Need> needs, OwnOrder own) {
    Scheduler scheduler = new Scheduler(tasks);
    Map<String, List<Task>> byName =
        tasks.stream()
            .collect(Collectors.groupingBy(Task::name, LinkedHashMap::new, Collectors.toList()));
    needs.forEach(
        need ->
            meant(byName.get(need.before()), op -> Rules.meansFirst(need, op))
                .forEach(
                    one ->
                        link(
                            scheduler,
                            List.of(one),
                            meant(
                                byName.get(need.after()),
                                op -> Rules.meansLater(need, one.operation(), op)),
                            need.rule())));
    own.chain(tasks, (earlier, later) -> link(scheduler, earlier, later, Link.OWN));
    return scheduler;
  }

  /** Puts each of the earlier tasks before each of the later ones. */
  static void link(Scheduler scheduler, List<Task> earlier, List<Task> later, String cause) {
    earlier.forEach(
        one ->
            later.stream()
                .filter(two -> !isOneFitting(one, two))
                .forEach(two -> scheduler.put(new Link(one.index(), two.index(), cause))));
  }

  /** Within a step that fits parts, they come in the order in which they are told. */
  private static boolean isOneFitting(Task one, Task two) {
    return one.operation().verb() == Verb.FIT && one.batch().equals(two.batch());
  }

  private static List<Task> meant(List<Task> tasks, Predicate<Operation> which) {
    return tasks.stream().filter(task -> which.test(task.operation())).toList();
  }
}
