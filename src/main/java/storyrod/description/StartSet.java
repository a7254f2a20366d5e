package storyrod.description;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Scope.ItemCells;

/** The hardware that needs no description of its own: trade sizes without makers or prices. */
final class StartSet {
  private static final String FILE = "hardware/items.yaml";
  private static final Mapping ITEMS = read();

  private StartSet() {}

  private static Mapping read() {
    try (InputStream stream = StartSet.class.getResourceAsStream("/storyrod/" + FILE)) {
      Diagnostics faults = new Diagnostics();
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      Node root = YamlReader.read(new SourceText(FILE, text), faults).orElseThrow();
      return (Mapping) ((Mapping) root).get("items").orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Member> members() {
    return ITEMS.members();
  }

  static List<String> names() {
    return ITEMS.members().stream().map(member -> member.key().text()).toList();
  }

  /** The names that end in a word as it was written, else those that have it in them. */
  static List<String> alike(String written) {
    String word = written.replace('/', '-').replace(' ', '-').toLowerCase(Locale.ROOT);
    List<String> ends = names().stream().filter(name -> name.endsWith("-" + word)).toList();
    return ends.isEmpty()
        ? names().stream().filter(name -> ("-" + name).contains("-" + word)).toList()
        : ends;
  }

  /** An item, known from then on in the whole project. */
  static Optional<ItemCells> item(String name, Scope asking) {
    Map<String, ItemCells> used = asking.pool().fromStartSet();
    member(name)
        .filter(member -> !used.containsKey(name))
        .ifPresent(
            member ->
                used.put(
                    name,
                    Declarations.item(
                        asking.pool().claim("item", member.key(), asking, false),
                        member,
                        Scope.ofProject(UsedFile.USUAL))));
    return Optional.ofNullable(used.get(name));
  }

  /** An item as written. */
  static Optional<Member> member(String name) {
    return ITEMS.members().stream().filter(member -> member.key().text().equals(name)).findFirst();
  }

  /** The items that are used, by their names in the whole project. */
  static Map<String, Entry> used(Context context) {
    Map<String, Entry> used = new LinkedHashMap<>();
    EntryReader reader = new EntryReader(context.in(Scope.ofProject(UsedFile.USUAL)));
    context
        .scope()
        .pool()
        .fromStartSet()
        .forEach(
            (name, cells) ->
                reader
                    .section(SupplySections.ITEM, member(name).orElseThrow().value())
                    .ifPresent(entry -> used.put(cells.name(), entry)));
    return used;
  }
}
