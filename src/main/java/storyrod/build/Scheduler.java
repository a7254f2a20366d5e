package storyrod.build;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lists tasks so that each comes after all that it waits for: always the ready batch that comes
 * first in good work, whole if it can be whole.
 */
final class Scheduler {
  private final List<Task> tasks;
  private final List<BitSet> waitsFor = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final BitSet done = new BitSet();

  Scheduler(List<Task> tasks) {
    this.tasks = tasks;
    tasks.forEach(task -> waitsFor.add(new BitSet()));
  }

  /** Puts one task before another. */
  void put(Link link) {
    if (link.earlier() != link.later()) {
      waitsFor.get(link.later()).set(link.earlier());
      links.add(link);
    }
  }

  List<Link> links() {
    return List.copyOf(links);
  }

  /** The shortest circle of tasks that wait for each other; none if all can be done. */
  List<Link> circle() {
    return Link.shortestCircle(links);
  }

  /** Batches in order; fewer than all tasks if some wait for each other. */
  List<List<Task>> batches() {
    List<List<Task>> batches = new ArrayList<>();
    for (Optional<Task> next = next(); next.isPresent(); next = next()) {
      String batch = next.get().batch();
      List<Task> ready =
          tasks.stream().filter(task -> task.batch().equals(batch) && isReady(task)).toList();
      ready.forEach(this::finish);
      batches.add(ready);
    }
    return batches;
  }

  private void finish(Task task) {
    done.set(task.index());
    waitsFor.forEach(waits -> waits.clear(task.index()));
  }

  private Optional<Task> next() {
    Set<String> broken = new HashSet<>();
    tasks.stream()
        .filter(task -> !done.get(task.index()) && !isReady(task))
        .forEach(task -> broken.add(task.batch()));
    return tasks.stream()
        .filter(this::isReady)
        .min(
            Comparator.comparing(Task::stage)
                .thenComparing(task -> broken.contains(task.batch()))
                .thenComparingInt(Task::rank)
                .thenComparingInt(Task::index));
  }

  private boolean isReady(Task task) {
    return !done.get(task.index()) && waitsFor.get(task.index()).isEmpty();
  }
}
