package storyrod.description;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Sequence;

/** Goes through a description's nodes and tells of each entry and its kind, outer ones first. */
final class Walk {
  private final Vocabulary vocabulary;
  private final BiConsumer<EntryType, Mapping> visitor;

  private Walk(Vocabulary vocabulary, BiConsumer<EntryType, Mapping> visitor) {
    this.vocabulary = vocabulary;
    this.visitor = visitor;
  }

  static void over(Node root, Vocabulary vocabulary, BiConsumer<EntryType, Mapping> visitor) {
    new Walk(vocabulary, visitor).entry(Sections.PROJECT, root);
  }

  private void entry(EntryType type, Node node) {
    if (node instanceof Mapping mapping) {
      visitor.accept(type, mapping);
      for (Key key : type.keys()) {
        mapping.get(key.name()).ifPresent(value -> value(key.type(), value));
      }
    }
  }

  private void value(ValueType type, Node node) {
    if (type instanceof ValueType.Section section) {
      entry(section.type(), node);
    } else if (type instanceof ValueType.SharedSection section) {
      entry(section.type(), node);
    } else if (type instanceof ValueType.Named named && node instanceof Mapping all) {
      all.members().forEach(member -> entry(named.type(), member.value()));
    } else if (type instanceof ValueType.Listed listed) {
      items(node).forEach(item -> entry(listed.type(), item));
    } else if (type instanceof ValueType.OneOrMore some) {
      items(node).forEach(item -> value(some.each(), item));
    } else if (type instanceof ValueType.Assemblies && node instanceof Mapping all) {
      all.members().forEach(member -> entry(PartSections.ASSEMBLY, member.value()));
    } else if (type instanceof ValueType.Kinds kinds) {
      items(node).forEach(item -> kind(kinds.types(), item));
    } else if (type instanceof ValueType.Joints) {
      items(node).forEach(item -> kind(vocabulary.joints(), item));
    } else if (type instanceof ValueType.Cuts) {
      items(node).forEach(item -> kind(vocabulary.cuts(), item));
    }
  }

  private static List<Node> items(Node node) {
    return node instanceof Sequence list ? list.items() : List.of(node);
  }

  private void kind(List<EntryType> kinds, Node item) {
    if (item instanceof Mapping mapping && mapping.members().size() == 1) {
      Node.Member only = mapping.members().getFirst();
      Optional<EntryType> found =
          kinds.stream().filter(kind -> kind.name().equals(only.key().text())).findFirst();
      found.ifPresent(kind -> entry(kind, only.value()));
    }
  }
}
