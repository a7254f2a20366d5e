package storyrod.description;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Scope.PartCells;

/** Reads a maker's own order and words about steps. */
final class Orders {
  /** The target that stands for all that a verb has left to do. */
  static final String ALL = "all";

  /** Targets that are no part: all that is left, the piece as a whole, the finish to be tried. */
  private static final List<String> GENERAL = List.of(ALL, "piece", "finish");

  private final Context context;

  Orders(Context context) {
    this.context = context;
  }

  /** A list of {@code VERB TARGET}; a repeated target stands for all of it. */
  Optional<List<OrderEntry>> list(Node node) {
    return Shapes.sequence(node, context)
        .map(
            sequence ->
                sequence.items().stream()
                    .flatMap(item -> Shapes.scalar(item, context).stream())
                    .flatMap(text -> each(text, text.text()))
                    .flatMap(text -> order(text).stream())
                    .toList());
  }

  /** Words by {@code TARGET} or {@code VERB TARGET}. */
  Optional<Map<String, String>> notes(Node node) {
    return Shapes.mapping(node, context)
        .map(
            mapping -> {
              Map<String, String> notes = new LinkedHashMap<>();
              mapping.members().forEach(member -> note(member, notes));
              return notes;
            });
  }

  private void note(Member member, Map<String, String> notes) {
    Optional<Scalar> text = Shapes.scalar(member.value(), context);
    each(member.key(), member.key().text())
        .flatMap(key -> noteKey(key).stream())
        .forEach(key -> text.ifPresent(words -> notes.put(key, words.text().strip())));
  }

  /** A text for each of what its last word stands for. */
  private Stream<Scalar> each(Scalar text, String words) {
    String target = words.substring(words.lastIndexOf(' ') + 1);
    if (!target.matches("[a-z][a-z0-9.-]*")) {
      return Stream.of(text);
    }
    List<String> names = new Expansion(context.scope()).names(target);
    return names.equals(List.of(target))
        ? Stream.of(text)
        : names.stream()
            .map(
                name ->
                    new Scalar(
                        words.substring(0, words.length() - target.length()) + name,
                        false,
                        text.at()));
  }

  private Optional<OrderEntry> order(Scalar text) {
    String[] words = text.text().strip().split("\\s+", 3);
    if (words.length != 2) {
      return context.fail(
          Diagnostic.error("order", text.at(), "expected a verb and a target, found " + text.kind())
              .hint("write what is done and to what: `fit left-side`"));
    }
    Lookup<String> verb =
        Names.word("unknown-verb", words[0], context.vocabulary().operations(), "verb");
    if (verb.found().isEmpty()) {
      context.diagnostics().add(verb.at(text.part(0, words[0].length())));
    }
    Optional<String> target = target(text, words[1]);
    return verb.found().flatMap(v -> target.map(t -> new OrderEntry(text.at(), v, t)));
  }

  private Optional<String> target(Scalar text, String name) {
    if (GENERAL.contains(name)) {
      return Optional.of(name);
    }
    Optional<String> known =
        new PartNames(context.scope())
            .assembly(name)
            .map(Assembly::name)
            .or(() -> context.names().item(name).found().map(Scope.ItemCells::name));
    Lookup<PartCells> part = context.names().part(name);
    int start = Math.max(0, text.text().length() - name.length());
    return known
        .or(() -> part.found().map(PartCells::name))
        .or(
            () ->
                context.fail(
                    Diagnostic.error(
                            "unknown-target",
                            text.part(start, start + name.length()),
                            "there is no part, assembly or item '" + Quote.of(name) + "'")
                        .hint(targetHint(name, part.hint()))));
  }

  private String targetHint(String name, String otherwise) {
    Scope scope = context.scope();
    List<String> words =
        new ArrayList<>(
            Stream.of(scope.parts(), scope.assemblies(), scope.items())
                .flatMap(each -> each.keySet().stream())
                .toList());
    return name.contains(".") ? otherwise : Names.suggest(name, words.stream());
  }

  /** The target of a note, which may have a verb before it. */
  private Optional<String> noteKey(Scalar key) {
    return key.text().strip().contains(" ")
        ? order(key).map(OrderEntry::toString)
        : target(key, key.text());
  }
}
