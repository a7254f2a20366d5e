package storyrod.description;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Cell.Use;
import storyrod.description.Choices.Choice;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Value.Kind;

/** Gives a description that is used its sizes, numbers, choices, stock and items. */
final class Given {
  private static final List<String> SECTIONS =
      List.of("sizes", "numbers", "choices", "meets", "stock", "items");

  private final Context context;
  private final Mapping used;

  /** In the context of the one that uses it, whose names the values may speak of. */
  Given(Context context, Mapping used) {
    this.context = context;
    this.used = used;
  }

  void into(Scope inside, Mapping entry) {
    if (UsedFile.isNothing(used)) {
      inside.setUnread();
    } else if (entry.get("with").orElse(entry) instanceof Mapping values && values != entry) {
      values.members().forEach(member -> give(member, inside));
    }
  }

  private void give(Member member, Scope inside) {
    String name = member.key().text();
    Optional<String> section =
        SECTIONS.stream().filter(each -> names(each).anyMatch(name::equals)).findFirst();
    if (section.isEmpty()) {
      unknown(member.key());
    } else if (member.value() instanceof Scalar value && !value.text().isBlank()) {
      inside.given().add(name);
      give(section.get(), member.key(), value, inside);
    }
  }

  private void give(String section, Scalar key, Scalar value, Scope inside) {
    String name = key.text();
    switch (section) {
      case "sizes" -> inside.values().put(name, formula(name, value, Kind.LENGTH));
      case "numbers" -> inside.values().put(name, formula(name, value, Kind.NUMBER));
      case "meets" -> meet(name, value, inside);
      case "choices" -> choose(name, value, inside);
      case "stock" ->
          context
              .scope()
              .find(Scope::stocks, value.text())
              .ifPresentOrElse(
                  stock -> inside.stocks().put(name, stock),
                  () -> context.diagnostics().add(noStock(value)));
      default -> giveItem(name, value, inside);
    }
  }

  private void meet(String name, Scalar value, Scope inside) {
    inside.aliases().put(name, Alias.of(context.scope(), value.text()));
  }

  private Cell formula(String name, Scalar value, Kind kind) {
    return new Cell(name, value, Use.whole(context.scope(), kind));
  }

  private Diagnostic noStock(Scalar value) {
    return context.names().stock(value.text()).at(value.at());
  }

  private void giveItem(String name, Scalar value, Scope inside) {
    Lookup<Scope.ItemCells> item = context.names().item(value.text());
    item.found().ifPresent(found -> inside.items().put(name, found));
    if (item.found().isEmpty()) {
      context.diagnostics().add(item.at(value.at()));
    }
  }

  /** A word of the choice, or the name of a choice outside whose word is handed on. */
  private void choose(String name, Scalar value, Scope inside) {
    List<String> words = words(name);
    String word =
        context.scope().find(Scope::choices, value.text()).map(Choice::chosen).orElse(value.text());
    if (words.contains(word)) {
      inside.choices().put(name, new Choice(words, word));
    } else {
      context
          .diagnostics()
          .add(
              Diagnostic.error(
                      "unknown-word",
                      value.at(),
                      "expected one of " + String.join(", ", words) + ", found " + value.kind())
                  .hint(Names.suggest(word, words.stream())));
    }
  }

  private List<String> words(String choice) {
    return Declarations.child(used.get("choices").orElse(used), choice)
        .map(Node::texts)
        .orElse(List.of());
  }

  private Stream<String> names(String section) {
    return used.get(section).orElse(used) instanceof Mapping names && names != used
        ? names.members().stream().map(member -> member.key().text())
        : Stream.empty();
  }

  private void unknown(Scalar key) {
    context
        .diagnostics()
        .add(
            Diagnostic.error(
                    "unknown-key",
                    key.at(),
                    "what is used here has no size, number, choice, stock, item or neighbour '"
                        + Quote.of(key.text())
                        + "'")
                .hint(Names.suggest(key.text(), SECTIONS.stream().flatMap(this::names))));
  }
}
