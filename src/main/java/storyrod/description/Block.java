package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.description.Node.Mapping;

/**
 * A description or one of its sub-assemblies as read, with those inside it.
 *
 * @param name the full name of a sub-assembly; empty for the project itself
 * @param inside what it has: for a description that is used, that description
 * @param placement how its frame lies in that of the piece
 */
record Block(
    String name,
    Entry entry,
    Entry inside,
    Context context,
    Mapping text,
    Placement placement,
    List<Block> blocks) {
  Block {
    blocks = List.copyOf(blocks);
  }

  static Block ofProject(Context context, Mapping text, Entry entry) {
    return new Block(
        "", entry, entry, context, text, Placement.NONE, inner(context, entry, Placement.NONE));
  }

  private static List<Block> inner(Context context, Entry around, Placement outer) {
    List<Block> blocks = new ArrayList<>();
    for (Map.Entry<String, Entry> each : around.entries("assemblies").entrySet()) {
      Assembly assembly = context.scope().assemblies().get(each.getKey());
      Entry entry = each.getValue();
      Entry inside = entry.find(EntryReader.INSIDE, Entry.class).orElse(entry);
      Context its = context.in(assembly.inside());
      Placement placement =
          assembly.placement(context.evaluator()).orElse(Placement.NONE).in(outer);
      blocks.add(
          new Block(
              assembly.name(),
              entry,
              inside,
              its,
              assembly.inside().text().orElseThrow(),
              placement,
              inner(its, inside, placement)));
    }
    return blocks;
  }

  /** Its name in the description around it. */
  String shortName() {
    return name.substring(name.lastIndexOf('.') + 1);
  }

  boolean isProject() {
    return name.isEmpty();
  }

  /** Whether it is built as a unit before it is fitted. */
  boolean isUnit() {
    return !isProject() && entry.yes("unit", true);
  }

  /** The parts that are built together at this level, those of what is no unit among them. */
  Stream<String> parts() {
    return Stream.concat(
        inside.entries("parts").keySet().stream().map(this::fullName),
        blocks.stream().filter(each -> !each.isUnit()).flatMap(Block::parts));
  }

  boolean isUsed() {
    return inside != entry;
  }

  /** This and all inside it, from the outside in. */
  Stream<Block> all() {
    return Stream.concat(Stream.of(this), blocks.stream().flatMap(Block::all));
  }

  /** The full name of one of its parts. */
  String fullName(String part) {
    return isProject() ? part : name + "." + part;
  }

  /** Its own stocks by their names in the whole project. */
  Map<String, Entry> stocks() {
    Map<String, Entry> own = new java.util.LinkedHashMap<>();
    inside
        .entries("stock")
        .forEach(
            (key, stock) -> {
              if (!context.scope().given().contains(key)) {
                own.put(context.scope().stocks().get(key).name(), stock);
              }
            });
    return own;
  }

  /** Its own items by their names in the whole project. */
  Map<String, Entry> items() {
    Map<String, Entry> own = new java.util.LinkedHashMap<>();
    inside
        .entries("items")
        .forEach(
            (key, item) -> {
              if (!context.scope().given().contains(key)) {
                own.put(context.scope().items().get(key).name(), item);
              }
            });
    return own;
  }
}
