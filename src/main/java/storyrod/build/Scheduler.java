package storyrod.build;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lists tasks so that each comes after all that it waits for: always the ready batch that comes
 * first in good work, whole if it can be whole.
 */
final class Scheduler {
  private final List<Task> tasks;
  private final List<BitSet> waitsFor = new ArrayList<>();
  private final BitSet done = new BitSet();

  Scheduler(List<Task> tasks) {
    this.tasks = tasks;
    tasks.forEach(task -> waitsFor.add(new BitSet()));
  }

  /** Puts one task before another, by their places in the list. */
  void before(int earlier, int later) {
    if (earlier != later) {
      waitsFor.get(later).set(earlier);
    }
  }

  /** Batches in order; fewer than all tasks if some wait for each other. */
  List<List<Task>> batches() {
    List<List<Task>> batches = new ArrayList<>();
    for (Optional<Task> next = next(); next.isPresent(); next = next()) {
      String batch = next.get().batch();
      List<Task> ready =
          tasks.stream().filter(task -> task.batch().equals(batch) && isReady(task)).toList();
      ready.forEach(task -> done.set(task.index()));
      batches.add(ready);
    }
    return batches;
  }

  private Optional<Task> next() {
    return tasks.stream()
        .filter(this::isReady)
        .min(
            Comparator.comparing(Task::stage)
                .thenComparing(task -> !isWhole(task.batch()))
                .thenComparingInt(Task::rank)
                .thenComparingInt(Task::index));
  }

  private boolean isWhole(String batch) {
    return tasks.stream()
        .filter(task -> task.batch().equals(batch) && !done.get(task.index()))
        .allMatch(this::isReady);
  }

  private boolean isReady(Task task) {
    if (done.get(task.index())) {
      return false;
    }
    BitSet open = (BitSet) waitsFor.get(task.index()).clone();
    open.andNot(done);
    return open.isEmpty();
  }
}
