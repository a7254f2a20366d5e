package storyrod.description;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The stages of work that a description and those that it uses write down. */
final class Stages {
  /** In a description that is used it means what that describes. */
  private static final String DRY_FIT = "dry-fit piece";

  private Stages() {}

  /** The project's own, then those of the descriptions that are used, from the outside in. */
  static List<StageEntry> of(Block root) {
    List<StageEntry> stages = new ArrayList<>();
    root.entry().list("build").forEach(entry -> stages.add(stage(entry, "")));
    root.all()
        .filter(Block::isUsed)
        .forEach(
            block ->
                block
                    .inside()
                    .list("build")
                    .forEach(entry -> stages.add(brought(stage(entry, block.name())))));
    return stages;
  }

  /** Trial, finish and what a description is given are no work on the unit itself. */
  private static StageEntry brought(StageEntry stage) {
    List<OrderEntry> inside =
        stage.order().stream()
            .map(each -> each.toString().equals(DRY_FIT) ? dryFit(each, stage.unit()) : each)
            .filter(each -> isInside(each, stage))
            .toList();
    Map<String, String> say = new LinkedHashMap<>();
    stage
        .say()
        .forEach(
            (key, words) -> say.put(key.equals(DRY_FIT) ? "dry-fit " + stage.unit() : key, words));
    return new StageEntry(stage.title(), inside, say, stage.unit());
  }

  private static OrderEntry dryFit(OrderEntry entry, String unit) {
    return new OrderEntry(entry.at(), entry.verb(), unit);
  }

  private static boolean isInside(OrderEntry entry, StageEntry stage) {
    return entry.target().equals(Orders.ALL)
        || entry.target().equals(stage.unit())
        || stage.isAbout(entry.target());
  }

  private static StageEntry stage(Entry entry, String unit) {
    List<OrderEntry> order =
        entry.find("order", List.class).stream()
            .flatMap(all -> ((List<?>) all).stream())
            .map(OrderEntry.class::cast)
            .toList();
    Map<String, String> say = new LinkedHashMap<>();
    entry
        .find("say", Map.class)
        .ifPresent(
            all ->
                ((Map<?, ?>) all).forEach((key, words) -> say.put((String) key, (String) words)));
    return new StageEntry(entry.located("stage", String.class), order, say, unit);
  }
}
