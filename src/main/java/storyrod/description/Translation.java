package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import storyrod.description.Description.AssemblyEntry;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.words.Words;

/**
 * What a maker wrote for readers, in the words of a language as far as it has names for it: titles,
 * and what is said beside parts, stages and hardware. Names by which a description speaks of its
 * own entries, and woods and products, of which tables know more, stay as they are.
 */
record Translation(Words words) {
  About about(About about) {
    return new About(
        located(about.project()),
        about.maker().map(words::name),
        about.summary().map(words::name),
        about.edition(),
        about.date(),
        about.licence().map(words::name));
  }

  PartEntry part(PartEntry part) {
    return part.told(words.name(part.title()), part.say().map(words::name));
  }

  AssemblyEntry assembly(AssemblyEntry unit) {
    return new AssemblyEntry(unit.name(), words.name(unit.title()), unit.at(), unit.parts());
  }

  ItemEntry item(ItemEntry item) {
    return new ItemEntry(
        item.name(),
        item.at(),
        words.name(item.title()),
        item.kind(),
        item.length(),
        item.diameter(),
        item.sideClearance(),
        item.pack(),
        item.price(),
        item.sizes());
  }

  HardwareEntry hardware(HardwareEntry entry) {
    Optional<String> say = entry.say().map(words::name);
    return new HardwareEntry(
        entry.at(),
        entry.item(),
        entry.count(),
        entry.parts(),
        entry.screw(),
        entry.screwsEach(),
        say);
  }

  StageEntry stage(StageEntry stage) {
    Map<String, String> say = each(stage.say(), words::name);
    return new StageEntry(located(stage.title()), stage.order(), say, stage.unit());
  }

  /** All values of a map, its keys as they are. */
  static <T> Map<String, T> each(Map<String, T> values, Function<T, T> change) {
    Map<String, T> changed = new LinkedHashMap<>();
    values.forEach((key, value) -> changed.put(key, change.apply(value)));
    return changed;
  }

  static <T> List<T> each(List<T> values, Function<T, T> change) {
    return values.stream().map(change).toList();
  }

  private Located<String> located(Located<String> text) {
    return new Located<>(words.name(text.value()), text.at());
  }
}
