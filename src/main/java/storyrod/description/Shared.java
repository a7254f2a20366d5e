package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Library.Found;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;

/** Puts in what several projects share: the shop, and items of hardware. */
final class Shared {
  private final Library library;
  private final Diagnostics diagnostics;

  Shared(Library library, Diagnostics diagnostics) {
    this.library = library;
    this.diagnostics = diagnostics;
  }

  /** The text with {@code shop: FILE} and {@code items-from:} replaced by what the files hold. */
  Mapping into(Mapping project) {
    Mapping result = project;
    if (project.get("shop").orElse(project) instanceof Scalar file && !file.text().isBlank()) {
      result =
          project.with("shop", section(file, "shop").orElse(new Mapping(List.of(), file.at())));
    }
    for (Scalar file : files(project.get("items-from"))) {
      Optional<Mapping> items = section(file, "items");
      if (items.isPresent()) {
        result = result.with("items", joined(result.get("items"), items.get()));
      }
    }
    return result;
  }

  private static List<Scalar> files(Optional<Node> value) {
    return value.stream()
        .flatMap(
            node ->
                node instanceof Sequence list
                    ? list.items().stream()
                    : java.util.stream.Stream.of(node))
        .filter(Scalar.class::isInstance)
        .map(Scalar.class::cast)
        .filter(text -> !text.text().isBlank())
        .toList();
  }

  /** What the project says itself comes first and wins. */
  private static Mapping joined(Optional<Node> own, Mapping shared) {
    if (!(own.orElse(shared) instanceof Mapping written) || written == shared) {
      return shared;
    }
    List<Member> members = new ArrayList<>(written.members());
    shared.members().stream()
        .filter(member -> written.get(member.key().text()).isEmpty())
        .forEach(members::add);
    return new Mapping(members, written.at());
  }

  private Optional<Mapping> section(Scalar file, String section) {
    Found read = library.find(file.text(), file.at().source());
    if (read.text().isEmpty()) {
      diagnostics.add(Diagnostic.error("no-file", file.at(), read.why()).hint(read.hint()));
      return Optional.empty();
    }
    SourceText text = read.text().get().usedAt(file.at());
    if (text.text().isBlank()) {
      diagnostics.add(
          Diagnostic.error("empty-file", Span.startOf(text), "there is nothing in this file")
              .hint("write `" + section + ":` with its keys below, as in a project"));
      return Optional.empty();
    }
    return YamlReader.read(text, diagnostics)
        .flatMap(root -> section(root, section).map(found -> inOwnUnits(root, found, section)));
  }

  private static Mapping inOwnUnits(Node root, Mapping found, String section) {
    if (!(root instanceof Mapping file)) {
      return found;
    }
    return section.equals("shop")
        ? OwnUnits.entry(file, found, SupplySections.SHOP)
        : OwnUnits.entries(file, found, SupplySections.ITEM);
  }

  private Optional<Mapping> section(Node root, String section) {
    Optional<Node> found = Declarations.child(root, section);
    if (found.isPresent() && found.get() instanceof Mapping keys) {
      return Optional.of(keys);
    }
    diagnostics.add(
        Diagnostic.error("missing-key", root.at(), "this file has no '" + section + "'")
            .hint("write `" + section + ":` with its keys below, as in a project"));
    return Optional.empty();
  }
}
