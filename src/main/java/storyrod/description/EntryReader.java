package storyrod.description;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Scope.Instance;

/** Reads keys with values after the list of keys of their kind. */
final class EntryReader {
  /** The key under which an assembly's entry has the description that it uses. */
  static final String INSIDE = "inside";

  private final Context context;

  EntryReader(Context context) {
    this.context = context;
  }

  /** What can be read of an entry; keys that are unknown, missing or faulty are reported. */
  Entry entry(EntryType type, Mapping node, Span at) {
    Map<String, Located<?>> values = new LinkedHashMap<>();
    ValueReader reader = new ValueReader(context);
    for (Member member : node.members()) {
      key(type, member)
          .flatMap(key -> reader.read(key.type(), member.value()))
          .ifPresent(value -> values.put(member.key().text(), value));
    }
    reportMissing(type, node, at);
    return new Entry(type.name(), at, values);
  }

  private Optional<Key> key(EntryType type, Member member) {
    Scalar name = member.key();
    Optional<Key> known =
        type.keys().stream().filter(key -> key.name().equals(name.text())).findFirst();
    if (known.isEmpty()) {
      context.diagnostics().add(unknown(type, member));
    }
    return known;
  }

  private static Diagnostic unknown(EntryType type, Member member) {
    Scalar name = member.key();
    return Diagnostic.error(
            "unknown-key",
            name.at(),
            "'" + Quote.of(name.text()) + "' is no key of " + article(type.name()))
        .hint(KeyHints.of(type, member));
  }

  private static String article(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
  }

  private void reportMissing(EntryType type, Mapping node, Span at) {
    for (Key key : type.keys()) {
      if (key.required() && node.get(key.name()).isEmpty() && !isWithoutColon(key, type, node)) {
        context
            .diagnostics()
            .add(
                Diagnostic.error(
                        "missing-key", at, "this " + type.name() + " has no '" + key.name() + "'")
                    .hint("write `" + key.name() + ":` with " + Meaning.of(key)));
      }
    }
  }

  private static boolean isWithoutColon(Key key, EntryType type, Mapping node) {
    return node.members().stream()
        .map(member -> KeyHints.startsWithKey(type, member.key().text()))
        .anyMatch(meant -> meant.filter(key.name()::equals).isPresent());
  }

  Optional<Entry> section(EntryType type, Node node) {
    return Shapes.mapping(node, context, KeyHints.asKeys(type))
        .map(mapping -> entry(type, mapping, mapping.at()));
  }

  Optional<Map<String, Entry>> named(EntryType type, Node node) {
    return Shapes.mapping(node, context)
        .map(
            mapping -> {
              Map<String, Entry> entries = new LinkedHashMap<>();
              List<Member> beside = new Beside(type, mapping).strays();
              mapping.members().stream()
                  .filter(member -> !beside.contains(member))
                  .forEach(member -> named(type, member, entries));
              beside.stream()
                  .limit(1)
                  .forEach(name -> context.diagnostics().add(Beside.fault(name)));
              return entries;
            });
  }

  /** Reads a part or a sub-assembly as often as it is repeated, anything else once. */
  private void named(EntryType type, Member member, Map<String, Entry> entries) {
    NameStyle.check(member.key(), context);
    if (type != PartSections.PART && type != PartSections.ASSEMBLY) {
      section(type, member).ifPresent(entry -> entries.put(member.key().text(), entry));
      return;
    }
    Optional.ofNullable(context.scope().instances().get(member.key().text())).stream()
        .flatMap(all -> all.all().stream())
        .forEach(
            instance ->
                instance(type, member, instance)
                    .ifPresent(entry -> entries.put(instance.name(), entry)));
  }

  private Optional<Entry> instance(EntryType type, Member member, Instance instance) {
    Context its = context.in(instance.scope());
    if (type == PartSections.PART) {
      return new EntryReader(its).section(type, member);
    }
    Scope inside = context.scope().assemblies().get(instance.name()).inside();
    return Declarations.child(member.value(), "use").isPresent()
        ? new EntryReader(its).section(type, member).map(entry -> used(entry, its.in(inside)))
        : new EntryReader(context.in(inside)).section(type, member);
  }

  /** The description that an assembly uses, read in its own names, as its key {@link #INSIDE}. */
  private static Entry used(Entry entry, Context inside) {
    return inside
        .scope()
        .text()
        .filter(text -> !UsedFile.isNothing(text))
        .map(
            text ->
                entry.with(
                    INSIDE, new EntryReader(inside).entry(Sections.PROJECT, text, text.at())))
        .orElse(entry);
  }

  private Optional<Entry> section(EntryType type, Member member) {
    return Shapes.mapping(member.value(), context, KeyHints.asKeys(type))
        .map(mapping -> entry(type, mapping, member.key().at()));
  }

  Optional<List<Entry>> listed(EntryType type, Node node) {
    return Shapes.sequence(node, context)
        .map(
            list ->
                list.items().stream()
                    .flatMap(
                        item -> expanded(item).flatMap(each -> each.section(type, item).stream()))
                    .toList());
  }

  /** Readers for each time that an entry stands for; none if it is left out. */
  private Stream<EntryReader> expanded(Node item) {
    return new Expansion(context.scope())
        .of(item).stream()
            .map(context::in)
            .filter(its -> new Repeats(its).holds(inner(item)))
            .map(EntryReader::new);
  }

  /** The keys of an entry, which for a joint or a cut stand behind its kind. */
  private static Node inner(Node item) {
    return item instanceof Mapping mapping && mapping.members().size() == 1
        ? mapping.members().getFirst().value()
        : item;
  }

  /** A list of {@code - KIND: {...}}. */
  Optional<List<Entry>> kinds(String what, List<EntryType> types, Node node) {
    return Shapes.sequence(node, context)
        .map(
            list -> {
              List<Entry> entries = new ArrayList<>();
              list.items()
                  .forEach(
                      item ->
                          expanded(item)
                              .flatMap(each -> each.kind(what, types, item).stream())
                              .forEach(entries::add));
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
    EntryType type =
        types.stream().filter(each -> each.name().equals(kind)).findFirst().orElseThrow();
    return section(type, only);
  }
}
