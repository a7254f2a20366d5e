package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;

/** Replaces what one of a project's options says otherwise. */
final class OptionChoice {
  private static final List<String> SECTIONS =
      List.of("sizes", "numbers", "choices", "stock", "items");

  private final Mapping project;
  private final Diagnostics diagnostics;

  OptionChoice(Mapping project, Diagnostics diagnostics) {
    this.project = project;
    this.diagnostics = diagnostics;
  }

  /** The project with an option; all options are looked through for names that mean nothing. */
  Mapping chosen(Optional<String> option) {
    Node options = project.get("options").orElse(Declarations.NONE);
    if (options instanceof Mapping all) {
      all.members().forEach(this::check);
    }
    return option.map(name -> chosen(name, options)).orElse(project);
  }

  private Mapping chosen(String name, Node options) {
    Optional<Node> option = Declarations.child(options, name);
    if (option.isEmpty()) {
      List<String> names =
          options instanceof Mapping all
              ? all.members().stream().map(member -> member.key().text()).toList()
              : List.of();
      diagnostics.add(
          Diagnostic.error(
                  "unknown-option",
                  Span.startOf(project.at().source()),
                  "this project has no option '" + Quote.of(name) + "'")
              .hint(
                  names.isEmpty()
                      ? "it has no options; leave --option out"
                      : Names.suggest(name, names.stream())));
      return project;
    }
    Mapping result = project;
    for (Member section : values(option.get()).members()) {
      result = result.with(section.key(), section.value());
    }
    return result;
  }

  /** Only the sections in which an option may say something else, with what it says. */
  Mapping values(Member option) {
    return values(option.value());
  }

  private Mapping values(Node option) {
    List<Member> sections = new ArrayList<>();
    for (String section : SECTIONS) {
      if (section(project, section) instanceof Mapping base) {
        Node changed =
            section(option, section) instanceof Mapping others
                ? changed(base, others, section)
                : base;
        sections.add(new Member(new Scalar(section, false, changed.at()), changed));
      }
    }
    return new Mapping(sections, project.at());
  }

  private static Node section(Node node, String section) {
    return Declarations.child(node, section).orElse(new Scalar("", false, node.at()));
  }

  private Mapping changed(Mapping base, Mapping others, String section) {
    Mapping result = base;
    for (Member other : others.members()) {
      Optional<Node> before = base.get(other.key().text());
      if (before.isPresent()) {
        Node changed = changed(before.get(), other.value(), section);
        result =
            changed == other.value() ? result.replaced(other) : result.with(other.key(), changed);
      }
    }
    return result;
  }

  private Node changed(Node before, Node other, String section) {
    if (section.equals("choices")
        && before instanceof Sequence words
        && other instanceof Scalar word) {
      return chosen(words, word);
    }
    boolean partly =
        before instanceof Mapping && other instanceof Mapping keys && keys.get("kind").isEmpty();
    if (!partly) {
      return other;
    }
    Mapping result = (Mapping) before;
    for (Member member : ((Mapping) other).members()) {
      result = result.with(member.key(), member.value());
    }
    return result;
  }

  private Node chosen(Sequence words, Scalar word) {
    List<Node> known =
        words.items().stream()
            .filter(each -> each instanceof Scalar text && text.text().equals(word.text()))
            .toList();
    if (known.isEmpty()) {
      diagnostics.add(
          Diagnostic.error(
                  "unknown-word", word.at(), "'" + Quote.of(word.text()) + "' is none of its words")
              .hint(
                  Names.suggest(
                      word.text(),
                      words.items().stream()
                          .filter(Scalar.class::isInstance)
                          .map(each -> ((Scalar) each).text()))));
      return words;
    }
    List<Node> first = new ArrayList<>(known);
    words.items().stream().filter(each -> !known.contains(each)).forEach(first::add);
    return new Sequence(first, words.at());
  }

  private void check(Member option) {
    for (String section : SECTIONS) {
      if (section(option.value(), section) instanceof Mapping others) {
        others.members().forEach(member -> check(member.key(), section));
        others.members().forEach(member -> checkWord(member, section));
      }
    }
  }

  private void checkWord(Member other, String section) {
    if (section(section(project, section), other.key().text()) instanceof Sequence words
        && section.equals("choices")
        && other.value() instanceof Scalar word) {
      chosen(words, word);
    }
  }

  private void check(Scalar name, String section) {
    List<String> known =
        section(project, section) instanceof Mapping names
            ? names.members().stream().map(member -> member.key().text()).toList()
            : List.of();
    if (!known.contains(name.text())) {
      diagnostics.add(
          Diagnostic.error(
                  "unknown-name",
                  name.at(),
                  "there is no '" + Quote.of(name.text()) + "' among the project's " + section)
              .hint(Names.suggest(name.text(), Stream.of(known).flatMap(List::stream))));
    }
  }
}
