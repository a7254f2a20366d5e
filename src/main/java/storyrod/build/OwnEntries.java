package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.rule.Job;
import storyrod.description.Diagnostic;
import storyrod.description.OrderEntry;
import storyrod.description.StageEntry;

/**
 * What the orders in a description name: the order of the piece, and for each unit that is a
 * description in use the order that it brings along. Each is a sequence of its own; what an order
 * further out names is left to that.
 */
final class OwnEntries {
  private static final String ALL = "all";

  private final List<StageEntry> build;
  private final Job job;
  private final Map<String, OrderEntry> entries = new LinkedHashMap<>();
  private final Map<String, StageEntry> stages = new LinkedHashMap<>();
  private final Map<String, List<String>> byUnit = new LinkedHashMap<>();
  private final List<Diagnostic> faults = new ArrayList<>();

  OwnEntries(List<StageEntry> build, Job job) {
    this.build = build;
    this.job = job;
    for (StageEntry stage : build) {
      stage.order().stream()
          .flatMap(entry -> meant(stage, entry))
          .forEach(entry -> enter(stage, entry));
      if (!stage.isBrought()) {
        faults.addAll(new OwnWords(stage, job).faults());
      }
    }
  }

  List<Diagnostic> faults() {
    return faults;
  }

  /** The names of operations in order, a sequence for each order there is. */
  List<List<String>> sequences() {
    return List.copyOf(byUnit.values());
  }

  OrderEntry entry(String operation) {
    return entries.get(operation);
  }

  StageEntry stage(String operation) {
    return stages.get(operation);
  }

  /** An entry such as {@code mill all} stands for what its verb has left to do in its unit. */
  private Stream<OrderEntry> meant(StageEntry stage, OrderEntry entry) {
    List<String> there =
        job.operations().stream()
            .filter(each -> each.verb().word().equals(entry.verb()))
            .map(Operation::target)
            .filter(stage::isAbout)
            .distinct()
            .toList();
    boolean isPlain = !entry.target().equals(ALL) || there.contains(ALL);
    return isPlain || there.isEmpty()
        ? Stream.of(entry)
        : there.stream()
            .map(target -> new OrderEntry(entry.at(), entry.verb(), target))
            .filter(each -> !isNamed(stage, each.toString()));
  }

  private boolean isNamed(StageEntry stage, String operation) {
    return entries.containsKey(operation)
        || build.stream()
            .filter(each -> each.unit().equals(stage.unit()))
            .flatMap(each -> each.order().stream())
            .anyMatch(entry -> entry.toString().equals(operation));
  }

  private void enter(StageEntry stage, OrderEntry entry) {
    String name = entry.toString();
    boolean isThere = job.operations().stream().anyMatch(each -> each.name().equals(name));
    if (isThere && !entries.containsKey(name)) {
      entries.put(name, entry);
      stages.put(name, stage);
      byUnit.computeIfAbsent(stage.unit(), unit -> new ArrayList<>()).add(name);
    } else if (isThere && stages.get(name).unit().equals(stage.unit())) {
      faults.add(
          Diagnostic.error("listed-twice", entry.at(), "`" + name + "` stands in the order twice")
              .also(entries.get(name).at(), "here already")
              .hint("leave one of the two out"));
    } else if (!isThere && !stage.isBrought()) {
      faults.add(OwnWords.unknown(entry, job));
    } else if (!isThere && !entry.target().equals(ALL)) {
      faults.add(OwnWords.leftOut(entry));
    }
  }
}
