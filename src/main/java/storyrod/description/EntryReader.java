package storyrod.description;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;

/** Reads keys with values after the list of keys of their kind. */
final class EntryReader {
  private final Context context;

  EntryReader(Context context) {
    this.context = context;
  }

  /** What can be read of an entry; keys that are unknown, missing or faulty are reported. */
  Entry entry(EntryType type, Mapping node, Span at) {
    Map<String, Located<?>> values = new LinkedHashMap<>();
    ValueReader reader = new ValueReader(context);
    for (Member member : node.members()) {
      key(type, member.key())
          .flatMap(key -> reader.read(key.type(), member.value()))
          .ifPresent(value -> values.put(member.key().text(), value));
    }
    reportMissing(type, node, at);
    return new Entry(type.name(), at, values);
  }

  private Optional<Key> key(EntryType type, Scalar name) {
    Optional<Key> known =
        type.keys().stream().filter(key -> key.name().equals(name.text())).findFirst();
    if (known.isEmpty()) {
      context.diagnostics().add(unknown(type, name));
    }
    return known;
  }

  private static Diagnostic unknown(EntryType type, Scalar name) {
    return Diagnostic.error(
            "unknown-key",
            name.at(),
            "'" + Quote.of(name.text()) + "' is no key of " + article(type.name()))
        .hint(KeyHints.of(type, name));
  }

  private static String article(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
  }

  private void reportMissing(EntryType type, Mapping node, Span at) {
    for (Key key : type.keys()) {
      if (key.required() && node.get(key.name()).isEmpty()) {
        context
            .diagnostics()
            .add(
                Diagnostic.error(
                        "missing-key", at, "this " + type.name() + " has no '" + key.name() + "'")
                    .hint("write `" + key.name() + ":` with " + Meaning.of(key)));
      }
    }
  }

  Optional<Entry> section(EntryType type, Node node) {
    return Shapes.mapping(node, context).map(mapping -> entry(type, mapping, mapping.at()));
  }

  Optional<Map<String, Entry>> named(EntryType type, Node node) {
    return Shapes.mapping(node, context)
        .map(
            mapping -> {
              Map<String, Entry> entries = new LinkedHashMap<>();
              for (Member member : mapping.members()) {
                NameStyle.check(member.key(), context);
                inside(type, member.key().text())
                    .section(type, member)
                    .ifPresent(entry -> entries.put(member.key().text(), entry));
              }
              return entries;
            });
  }

  private EntryReader inside(EntryType type, String name) {
    Optional<Scope> inner =
        Optional.ofNullable(context.scope().assemblies().get(name))
            .filter(scope -> type == Sections.ASSEMBLY);
    return inner.map(scope -> new EntryReader(context.in(scope))).orElse(this);
  }

  private Optional<Entry> section(EntryType type, Member member) {
    return Shapes.mapping(member.value(), context)
        .map(mapping -> entry(type, mapping, member.key().at()));
  }

  Optional<List<Entry>> listed(EntryType type, Node node) {
    return Shapes.sequence(node, context)
        .map(list -> list.items().stream().flatMap(item -> section(type, item).stream()).toList());
  }

  /** A list of {@code - KIND: {...}}. */
  Optional<List<Entry>> kinds(String what, List<EntryType> types, Node node) {
    return Shapes.sequence(node, context)
        .map(
            list -> {
              List<Entry> entries = new ArrayList<>();
              list.items().forEach(item -> kind(what, types, item).ifPresent(entries::add));
              return entries;
            });
  }

  private Optional<Entry> kind(String what, List<EntryType> types, Node item) {
    if (!(item instanceof Mapping mapping) || mapping.members().size() != 1) {
      return context.fail(
          Shapes.wrong(
              item,
              "one kind of " + what,
              "write `- KIND: {KEY: VALUE, ...}`, one a line, or indent its keys further"));
    }
    Member only = mapping.members().getFirst();
    String kind = only.key().text();
    Lookup<String> known =
        Names.word("unknown-" + what, kind, types.stream().map(EntryType::name).toList(), what);
    if (known.found().isEmpty()) {
      return context.fail(known.at(only.key().at()));
    }
    return section(
        types.stream().filter(type -> type.name().equals(kind)).findFirst().orElseThrow(), only);
  }
}
