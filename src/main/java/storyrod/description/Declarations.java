package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import storyrod.description.Cell.Side;
import storyrod.description.Cell.Use;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Scalar;
import storyrod.description.Scope.PartCells;
import storyrod.description.Value.Kind;
import storyrod.geometry.Face;

/**
 * Collects all names of a description with their formulas before anything is worked out. What has
 * the wrong shape gets a cell without a value here and its message from the {@link ValueReader}.
 */
final class Declarations {
  private static final Node NONE = new Mapping(List.of(), Span.startOf(new SourceText("", "")));

  private Declarations() {}

  static Scope of(Mapping root) {
    Scope scope = Scope.ofProject();
    each(root, "sizes", (name, node) -> value(scope, name, node, Kind.LENGTH));
    each(root, "numbers", (name, node) -> value(scope, name, node, Kind.NUMBER));
    each(root, "stock", (name, node) -> stock(scope, name, node));
    each(root, "items", (name, node) -> scope.items().put(name.text(), name.at()));
    each(root, "parts", (name, node) -> part(scope, name, node));
    each(root, "assemblies", (name, node) -> assembly(scope, name, node));
    return scope;
  }

  private static void each(Node node, String section, BiConsumer<Scalar, Node> declare) {
    if (child(node, section).orElse(NONE) instanceof Mapping names) {
      names.members().forEach(member -> declare.accept(member.key(), member.value()));
    }
  }

  private static void value(Scope scope, Scalar name, Node node, Kind kind) {
    scope.values().putIfAbsent(name.text(), cell(name, node, Use.whole(scope, kind)));
  }

  private static Cell cell(Scalar name, Node node, Use use) {
    return node instanceof Scalar text && !text.text().isEmpty()
        ? new Cell(name.text(), text, use)
        : Cell.broken(name.text(), name.at(), use.scope());
  }

  private static void stock(Scope scope, Scalar name, Node node) {
    Scalar full = new Scalar(name.text() + ".thickness", false, name.at());
    Node thickness = child(node, "thickness").orElse(NONE);
    scope.stocks().put(name.text(), cell(full, thickness, Use.thickness(scope)));
  }

  private static Optional<Node> child(Node node, String key) {
    return node instanceof Mapping mapping ? mapping.get(key) : Optional.empty();
  }

  private static void part(Scope scope, Scalar name, Node node) {
    String full = scope.fullName(name.text());
    Map<Face, Cell> faces = new LinkedHashMap<>();
    for (Face face : Face.values()) {
      Scalar called = new Scalar(full + "." + face.word(), false, name.at());
      Side side = face.sign() < 0 ? Side.FROM : Side.TO;
      Node range = child(node, face.axis().word()).filter(Scalar.class::isInstance).orElse(NONE);
      faces.put(face, cell(called, range, new Use(scope, side, Kind.LENGTH)));
    }
    scope.parts().put(name.text(), new PartCells(full, faces));
  }

  private static void assembly(Scope scope, Scalar name, Node node) {
    Scope inside = scope.ofAssembly(name.text());
    scope.assemblies().put(name.text(), inside);
    each(node, "parts", (part, range) -> part(inside, part, range));
    each(node, "assemblies", (inner, of) -> assembly(inside, inner, of));
  }
}
