package storyrod.description;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Units;
import storyrod.words.Words;

/** Makes a description from entries in which everything could be read. */
final class DescriptionBuilder {
  private final Block root;
  private final Entry project;
  private final LengthFormat format;

  DescriptionBuilder(Block root, LengthFormat format) {
    this.root = root;
    this.project = root.entry();
    this.format = format;
  }

  Description build(SourceText source) {
    return new Description(
        source,
        about(),
        format,
        sizes(),
        stocks(),
        new Matches(connections("matches"), root.context().diagnostics()).given(parts(root)),
        connections("joints"),
        connections("cuts"),
        assemblies(),
        items(),
        connections("hardware").stream().map(DescriptionBuilder::hardware).toList(),
        project.find("finish", Entry.class).map(Supplies::finish),
        project.find("glue", Entry.class).map(Supplies::glue),
        new ShopDefaults(format.unit()).shop(project.find("shop", Entry.class)),
        project.find("climate", Entry.class).map(Supplies::climate).orElse(ClimateEntry.USUAL),
        Supplies.onHand(project),
        Stages.of(root),
        options(),
        Words.ENGLISH,
        Units.OWN,
        project.find("record", Entry.class).map(Records::of).orElse(RecordEntry.NONE));
  }

  private About about() {
    return new About(
        project.located("project", String.class),
        project.find("maker", String.class),
        project.find("summary", String.class),
        project.find("edition", String.class),
        project.find("date", LocalDate.class),
        project.find("licence", String.class),
        project.find("currency", String.class));
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

  private Map<String, StockEntry> stocks() {
    Map<String, StockEntry> made = new LinkedHashMap<>();
    root.all()
        .forEach(
            block ->
                block
                    .stocks()
                    .forEach((name, entry) -> made.putIfAbsent(name, Supplies.stock(name, entry))));
    return made;
  }

  /** The items described anywhere, and those of the start set that are used. */
  private Map<String, ItemEntry> items() {
    Map<String, ItemEntry> made = new LinkedHashMap<>();
    root.all()
        .forEach(
            block ->
                block.items().forEach((name, entry) -> made.putIfAbsent(name, item(name, entry))));
    StartSet.used(root.context()).forEach((name, entry) -> made.put(name, item(name, entry)));
    return made;
  }

  private Map<String, AssemblyEntry> assemblies() {
    Map<String, AssemblyEntry> made = new LinkedHashMap<>();
    root.all().filter(Block::isUnit).forEach(block -> made.put(block.name(), assembly(block)));
    return made;
  }

  private Map<String, String> options() {
    Map<String, String> options = new LinkedHashMap<>();
    project
        .entries("options")
        .forEach((name, entry) -> options.put(name, entry.find("say", String.class).orElse("")));
    return options;
  }

  static <T extends Enum<T>> T word(Class<T> type, Entry entry) {
    String name = entry.text("kind").toUpperCase(java.util.Locale.ROOT).replace('-', '_');
    return Enum.valueOf(type, name);
  }

  /** Something of a description with its place in the text, to keep the order of the text. */
  private record InText<T>(int start, List<T> what) {}

  private static <T> List<T> inOrder(List<InText<T>> all) {
    return all.stream()
        .sorted(Comparator.comparingInt(InText::start))
        .flatMap(each -> each.what().stream())
        .toList();
  }

  private static List<PartEntry> parts(Block block) {
    List<InText<PartEntry>> parts = new ArrayList<>();
    EntryPlacer placer = new EntryPlacer(block.placement());
    block
        .inside()
        .entries("parts")
        .forEach(
            (name, entry) ->
                parts.add(
                    new InText<>(
                        entry.at().start(),
                        List.of(part(block.fullName(name), name, placer.place(entry))))));
    block.blocks().forEach(each -> parts.add(new InText<>(each.entry().at().start(), parts(each))));
    return inOrder(parts);
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
        entry.find("turn", Entry.class),
        entry.list("outline"),
        Makeup.of(entry),
        entry.findLocated("match", String.class),
        entry.findLocated("load", Rational.class),
        entry.find("say", String.class));
  }

  private static String title(String name, Entry entry) {
    String own = entry.has("repeat") ? name.substring(0, name.lastIndexOf('-')) : name;
    return entry.find("title", String.class).orElseGet(() -> NameStyle.title(own));
  }

  private List<Entry> connections(String section) {
    return connections(section, root);
  }

  private static List<Entry> connections(String section, Block block) {
    EntryPlacer placer = new EntryPlacer(block.placement());
    List<InText<Entry>> all = new ArrayList<>();
    block
        .inside()
        .list(section)
        .forEach(entry -> all.add(new InText<>(entry.at().start(), List.of(placer.place(entry)))));
    block
        .blocks()
        .forEach(
            each -> all.add(new InText<>(each.entry().at().start(), connections(section, each))));
    return inOrder(all);
  }

  /** Of several units each has its number, for it is spoken of by itself. */
  private static String numbered(String name, Entry entry) {
    return title(name, entry)
        + (entry.has("repeat") ? " " + name.substring(name.lastIndexOf('-') + 1) : "");
  }

  private static AssemblyEntry assembly(Block block) {
    return new AssemblyEntry(
        block.name(),
        numbered(block.shortName(), block.entry()),
        block.entry().at(),
        block.entry().yes("loose", false),
        block.parts().toList());
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
        entry.find("price", Rational.class),
        sizes(entry),
        entry.findLocated("from", String.class));
  }

  private static ItemSizes sizes(Entry entry) {
    return new ItemSizes(
        entry.findLength("bottom-clearance"),
        entry.findLength("notch"),
        entry.findLength("cup-diameter"),
        entry.findLength("cup-depth"),
        entry.findLength("cup-edge"),
        entry.findLength("leaf-width"),
        entry.findLength("leaf-thickness"),
        entry.findLength("centres"),
        entry.findLength("width"),
        entry.findLength("thickness"),
        entry.findLength("tongue"),
        entry.findLength("tongue-thickness"),
        entry.findLength("travel"),
        entry.findLength("slot-depth"));
  }

  static int count(Entry entry, String key, int otherwise) {
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
}
