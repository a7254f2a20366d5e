package storyrod.build;

import java.util.Optional;
import storyrod.description.StageEntry;

/**
 * An operation with its place in good work.
 *
 * @param stage the stage that it usually belongs to
 * @param rank what comes first within a stage, lower first
 * @param batch what can be done in one step has this in common
 * @param own the maker's own stage that names it
 */
record Task(
    int index,
    Operation operation,
    StageKey stage,
    int rank,
    String batch,
    Optional<StageEntry> own) {
  String name() {
    return operation.name();
  }

  Task in(StageEntry ownStage, int run) {
    return new Task(index, operation, stage, rank, batch + "@" + run, Optional.of(ownStage));
  }
}
