package storyrod.description;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.geometry.Axis;

/** Checks the shape of values that {@link Declarations} has given their meaning already. */
final class Shaped {
  private static final List<String> AXES = Arrays.stream(Axis.values()).map(Axis::word).toList();

  private final Context context;

  Shaped(Context context) {
    this.context = context;
  }

  /** Names, each with a single value. */
  Optional<Mapping> gifts(Node node) {
    return Shapes.mapping(node, context)
        .map(
            mapping -> {
              mapping.members().forEach(member -> Shapes.scalar(member.value(), context));
              return mapping;
            });
  }

  /** Names, each for one of a list of parts. */
  Optional<Mapping> lists(Node node) {
    return Shapes.mapping(node, context)
        .map(
            mapping -> {
              mapping.members().forEach(this::list);
              return mapping;
            });
  }

  private void list(Member member) {
    NameStyle.check(member.key(), context);
    Shapes.sequence(member.value(), context)
        .ifPresent(
            list ->
                list.items().stream()
                    .flatMap(item -> Shapes.scalar(item, context).stream())
                    .forEach(this::isPart));
  }

  private void isPart(Scalar text) {
    for (String name : new Expansion(context.scope()).names(text.text())) {
      Lookup<Scope.PartCells> part = context.names().part(name);
      if (part.found().isEmpty()) {
        context.diagnostics().add(part.at(text.at()));
      }
    }
  }

  /** Axes, each with where something begins, or with a range. */
  Optional<Mapping> place(Node node) {
    return Shapes.mapping(node, context, "say on which axis, as in `{x: 0 to 20, z: 5}`")
        .map(
            mapping -> {
              mapping.members().forEach(this::place);
              return mapping;
            });
  }

  private void place(Member member) {
    Lookup<String> axis = Names.word("unknown-key", member.key().text(), AXES, "axis");
    if (axis.found().isEmpty()) {
      context.diagnostics().add(axis.at(member.key().at()));
    } else {
      Shapes.scalar(member.value(), context).ifPresent(this::read);
    }
  }

  private void read(Scalar text) {
    LengthValues lengths = new LengthValues(context);
    if (Uses.isRange(text)) {
      lengths.range(text, Cell.Use.whole(context.scope(), Value.Kind.LENGTH));
    } else {
      lengths.any(text);
    }
  }
}
