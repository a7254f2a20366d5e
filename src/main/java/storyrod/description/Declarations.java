package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import storyrod.description.Cell.Side;
import storyrod.description.Cell.Use;
import storyrod.description.Choices.Choice;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;
import storyrod.description.Scope.Instance;
import storyrod.description.Scope.Instances;
import storyrod.description.Scope.ItemCells;
import storyrod.description.Scope.PartCells;
import storyrod.description.Scope.StockCells;
import storyrod.description.Value.Kind;
import storyrod.geometry.Face;

/**
 * Collects all names of a description with their formulas before anything is worked out, except for
 * the conditions and counts that decide which parts there are. What has the wrong shape gets a cell
 * without a value here and its message from the {@link ValueReader}.
 */
final class Declarations {
  static final Node NONE = new Mapping(List.of(), Span.startOf(new SourceText("", "")));

  private final Context context;
  private final Scope scope;

  Declarations(Context context) {
    this.context = context;
    this.scope = context.scope();
  }

  /** Puts the names of a description or of a sub-assembly into its scope. */
  void declare(Mapping block) {
    scope.setLacksStock(scope.isWhole() && lacksStock(block));
    each(block, "choices", this::choice);
    each(block, "sizes", (name, node) -> value(name, node, Kind.LENGTH));
    each(block, "numbers", (name, node) -> value(name, node, Kind.NUMBER));
    each(block, "meets", (name, node) -> meets(name));
    each(block, "stock", this::stock);
    each(block, "items", this::item);
    scope.setOpen(true);
    each(block, "parts", this::instances);
    each(block, "assemblies", this::instances);
    scope.setOpen(false);
    each(block, "parts", (name, node) -> all(name, instance -> part(instance, name, node)));
    each(
        block, "assemblies", (name, node) -> all(name, instance -> assembly(instance, name, node)));
  }

  /** Where all parts come from descriptions that are used, these bring their stock. */
  private static boolean lacksStock(Mapping block) {
    boolean brought = block.get("assemblies").isPresent() && !hasParts(block);
    boolean isGiven =
        block.get("stock").filter(each -> !isEmpty(each)).isPresent() || UsedFile.isNothing(block);
    return !isGiven && !brought;
  }

  private static boolean isEmpty(Node node) {
    return node instanceof Mapping mapping && mapping.members().isEmpty();
  }

  private static boolean hasParts(Node node) {
    return child(node, "parts").isPresent()
        || child(node, "assemblies").orElse(NONE) instanceof Mapping inner
            && inner.members().stream()
                .map(Member::value)
                .anyMatch(each -> child(each, "use").isEmpty() && hasParts(each));
  }

  private static void each(Node node, String section, BiConsumer<Scalar, Node> declare) {
    if (child(node, section).orElse(NONE) instanceof Mapping names) {
      names.members().forEach(member -> declare.accept(member.key(), member.value()));
    }
  }

  private void all(Scalar name, java.util.function.Consumer<Instance> declare) {
    scope.instances().get(name.text()).all().forEach(declare);
  }

  private void choice(Scalar name, Node node) {
    if (node instanceof Sequence words) {
      List<String> all = Node.texts(words);
      if (!all.isEmpty()) {
        scope.choices().putIfAbsent(name.text(), new Choice(all, all.getFirst()));
      }
    }
  }

  private void meets(Scalar name) {
    scope.aliases().putIfAbsent(name.text(), Alias.ofNothing(scope));
  }

  private void value(Scalar name, Node node, Kind kind) {
    scope.values().putIfAbsent(name.text(), cell(name, node, Use.whole(scope, kind)));
  }

  private static Cell cell(Scalar name, Node node, Use use) {
    return node instanceof Scalar text && !text.text().isEmpty()
        ? new Cell(name.text(), text, use)
        : Cell.broken(name.text(), name.at(), use.scope());
  }

  private void stock(Scalar name, Node node) {
    if (!scope.stocks().containsKey(name.text())) {
      Scalar full = new Scalar(name.text() + ".thickness", false, name.at());
      Node thickness = child(node, "thickness").orElse(NONE);
      boolean own = thickness instanceof Scalar text && text.text().matches(".*[a-z]{3,}.*");
      scope
          .stocks()
          .put(
              name.text(),
              new StockCells(
                  scope.pool().claim("stock", name, scope, own),
                  cell(full, thickness, Use.thickness(scope))));
    }
  }

  private void item(Scalar name, Node node) {
    if (!scope.items().containsKey(name.text())) {
      String full = scope.pool().claim("item", name, scope, false);
      scope.items().put(name.text(), item(full, new Member(name, node), scope));
    }
  }

  /** An item's sizes, by its key in the description. */
  static ItemCells item(String full, Member item, Scope scope) {
    Map<String, Cell> sizes = new LinkedHashMap<>();
    for (Key key : SupplySections.ITEM.keys()) {
      Optional<Node> size = child(item.value(), key.name());
      if (key.type() instanceof ValueType.LengthValue && size.isPresent()) {
        Scalar called = new Scalar(item.key().text() + "." + key.name(), false, item.key().at());
        sizes.put(key.name(), cell(called, size.get(), Use.thickness(scope)));
      }
    }
    return new ItemCells(full, sizes);
  }

  static Optional<Node> child(Node node, String key) {
    return node instanceof Mapping mapping ? mapping.get(key) : Optional.empty();
  }

  private void instances(Scalar name, Node node) {
    List<Instance> all = new Repeats(context).of(name, node);
    scope.instances().putIfAbsent(name.text(), new Instances(scope.fullName(name.text()), all));
  }

  private void part(Instance instance, Scalar name, Node node) {
    String full = scope.fullName(instance.name());
    Map<Face, Cell> faces = new LinkedHashMap<>();
    for (Face face : Face.values()) {
      Scalar called = new Scalar(full + "." + face.word(), false, name.at());
      Side side = face.sign() < 0 ? Side.FROM : Side.TO;
      Node range = child(node, face.axis().word()).filter(Scalar.class::isInstance).orElse(NONE);
      faces.put(face, cell(called, range, new Use(instance.scope(), side, Kind.LENGTH)));
    }
    scope.parts().putIfAbsent(instance.name(), new PartCells(full, faces));
  }

  private void assembly(Instance instance, Scalar name, Node node) {
    if (scope.assemblies().containsKey(instance.name())) {
      return;
    }
    Assembly assembly =
        child(node, "use").isPresent() && node instanceof Mapping keys
            ? new Uses(context.in(instance.scope())).of(instance, keys)
            : inPlace(instance, node);
    scope.assemblies().put(instance.name(), assembly);
  }

  private Assembly inPlace(Instance instance, Node node) {
    Scope inside = instance.scope().ofAssembly(instance.name());
    Mapping block = node instanceof Mapping mapping ? mapping : (Mapping) NONE;
    inside.setText(block);
    return Assembly.inPlace(
        scope.fullName(instance.name()),
        inside,
        its -> new Declarations(context.in(its)).declare(block));
  }
}
