package storyrod.description;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import storyrod.description.Description.About;
import storyrod.description.Description.AssemblyEntry;
import storyrod.description.Description.FinishEntry;
import storyrod.description.Description.HardwareEntry;
import storyrod.description.Description.ItemEntry;
import storyrod.description.Description.ItemKind;
import storyrod.description.Description.OrderEntry;
import storyrod.description.Description.PartEntry;
import storyrod.description.Description.Price;
import storyrod.description.Description.SheetSize;
import storyrod.description.Description.StageEntry;
import storyrod.description.Description.StockEntry;
import storyrod.description.Description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Unit;

/** Makes a description from entries in which everything could be read. */
final class DescriptionBuilder {
  private final Entry project;
  private final Unit unit;

  DescriptionBuilder(Entry project, Unit unit) {
    this.project = project;
    this.unit = unit;
  }

  Description build(SourceText source) {
    return new Description(
        source,
        about(),
        format(),
        sizes(),
        each("stock", DescriptionBuilder::stock),
        parts(),
        connections("joints"),
        connections("cuts"),
        each("assemblies", DescriptionBuilder::assembly),
        each("items", DescriptionBuilder::item),
        project.list("hardware").stream().map(DescriptionBuilder::hardware).toList(),
        project.find("finish", Entry.class).map(DescriptionBuilder::finish),
        new ShopDefaults(unit).shop(project.find("shop", Entry.class)),
        project.list("build").stream().map(DescriptionBuilder::stage).toList());
  }

  private About about() {
    return new About(
        project.located("project", String.class),
        project.find("maker", String.class),
        project.find("summary", String.class),
        project.find("edition", String.class),
        project.find("date", LocalDate.class));
  }

  private LengthFormat format() {
    return new LengthFormat(unit, project.find("fraction", Integer.class).orElse(32));
  }

  private Map<String, Length> sizes() {
    Map<String, Length> sizes = new LinkedHashMap<>();
    project
        .find("sizes", Map.class)
        .ifPresent(
            all ->
                ((Map<?, ?>) all).forEach((name, size) -> sizes.put((String) name, (Length) size)));
    return sizes;
  }

  private <T> Map<String, T> each(String section, BiFunction<String, Entry, T> make) {
    Map<String, T> made = new LinkedHashMap<>();
    project.entries(section).forEach((name, entry) -> made.put(name, make.apply(name, entry)));
    return made;
  }

  private static StockEntry stock(String name, Entry entry) {
    return new StockEntry(
        name,
        entry.at(),
        word(StockKind.class, entry),
        entry.text("species"),
        entry.located("thickness", Length.class),
        entry.findLength("bought-as"),
        entry.find("sheet", SheetSize.class),
        entry.find("price", Price.class),
        entry.findLocated("density", Rational.class),
        entry.yes("grained", true));
  }

  private static <T extends Enum<T>> T word(Class<T> type, Entry entry) {
    String name = entry.text("kind").toUpperCase(java.util.Locale.ROOT).replace('-', '_');
    return Enum.valueOf(type, name);
  }

  private List<PartEntry> parts() {
    List<PartEntry> parts = new ArrayList<>();
    project.entries("parts").forEach((name, entry) -> parts.add(part(name, name, entry)));
    project
        .entries("assemblies")
        .forEach(
            (assembly, inside) ->
                inside
                    .entries("parts")
                    .forEach((name, entry) -> parts.add(part(assembly + "." + name, name, entry))));
    parts.sort(Comparator.comparingInt(part -> part.at().start()));
    return parts;
  }

  private static PartEntry part(String full, String name, Entry entry) {
    return new PartEntry(
        full,
        title(name, entry),
        entry.at(),
        entry.located("stock", String.class),
        entry.located("x", Range.class),
        entry.located("y", Range.class),
        entry.located("z", Range.class),
        entry.located("grain", Axis.class),
        entry.list("outline"),
        entry.find("say", String.class));
  }

  private static String title(String name, Entry entry) {
    return entry.find("title", String.class).orElseGet(() -> NameStyle.title(name));
  }

  private List<Entry> connections(String section) {
    Stream<Entry> inside =
        project.entries("assemblies").values().stream()
            .flatMap(each -> each.list(section).stream());
    return Stream.concat(project.list(section).stream(), inside)
        .sorted(Comparator.comparingInt(entry -> entry.at().start()))
        .toList();
  }

  private static AssemblyEntry assembly(String name, Entry entry) {
    List<String> parts =
        entry.entries("parts").keySet().stream().map(part -> name + "." + part).toList();
    return new AssemblyEntry(name, title(name, entry), entry.at(), parts);
  }

  private static ItemEntry item(String name, Entry entry) {
    return new ItemEntry(
        name,
        entry.at(),
        title(name, entry),
        word(ItemKind.class, entry),
        entry.findLength("length"),
        entry.findLength("diameter"),
        entry.findLength("side-clearance"),
        count(entry, "pack", 1),
        entry.find("price", Rational.class));
  }

  private static int count(Entry entry, String key, int otherwise) {
    return entry.find(key, Integer.class).orElse(otherwise);
  }

  private static HardwareEntry hardware(Entry entry) {
    return new HardwareEntry(
        entry.at(),
        entry.located("item", String.class),
        count(entry, "count", 1),
        entry.list("parts", String.class),
        entry.find("screw", String.class),
        count(entry, "screws-each", 0),
        entry.find("say", String.class));
  }

  /** Three coats, a day apart, on wood sanded to 180: common practice for wiped varnish. */
  private static FinishEntry finish(Entry entry) {
    return new FinishEntry(
        entry.at(),
        entry.text("product"),
        count(entry, "coats", 3),
        count(entry, "dry-hours", 24),
        count(entry, "sand-to", 180),
        entry.find("tried-on", String.class));
  }

  private static StageEntry stage(Entry entry) {
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
    return new StageEntry(entry.located("stage", String.class), order, say);
  }
}
