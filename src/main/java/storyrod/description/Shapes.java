package storyrod.description;

import java.util.Optional;
import java.util.function.Predicate;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;

/** Checks that a node has the shape that its key asks for. */
final class Shapes {
  private static final String SHAPE = "wrong-shape";

  private Shapes() {}

  static Optional<Scalar> scalar(Node node, Context context) {
    if (node instanceof Scalar scalar && scalar.text().isBlank()) {
      return context.fail(empty(scalar));
    }
    return node instanceof Scalar scalar
        ? Optional.of(scalar)
        : context.fail(wrong(node, "a single value", "write one value behind the colon"));
  }

  static Optional<Mapping> mapping(Node node, Context context) {
    return mapping(node, context, "write `key: value` lines, indented");
  }

  static Optional<Mapping> mapping(Node node, Context context, String hint) {
    return node instanceof Mapping mapping
        ? Optional.of(mapping)
        : context.fail(emptyOr(node, wrong(node, "keys with values", keysHint(node, hint))));
  }

  private static String keysHint(Node node, String otherwise) {
    return switch (node) {
      case Scalar text when !text.quoted() && text.text().matches("[a-z][a-z0-9-]*:\\S.*") ->
          "put a space behind the colon: `" + Quote.of(text.text().replaceFirst(":", ": ")) + "`";
      case Sequence list when isEach(list, Shapes::isNamed) -> "take the `- ` away";
      case Sequence list when isEach(list, Mapping.class::isInstance) ->
          "write a name for each in place of the `- `, such as `left-side:`";
      default -> otherwise;
    };
  }

  private static boolean isEach(Sequence list, Predicate<Node> what) {
    return !list.items().isEmpty() && list.items().stream().allMatch(what);
  }

  private static boolean isNamed(Node node) {
    return node instanceof Mapping only
        && only.members().size() == 1
        && only.members().getFirst().value() instanceof Mapping;
  }

  static Optional<Sequence> sequence(Node node, Context context) {
    return node instanceof Sequence sequence
        ? Optional.of(sequence)
        : context.fail(
            emptyOr(node, wrong(node, "a list", "start each line of it with `- `, or use [a, b]")));
  }

  private static Diagnostic emptyOr(Node node, Diagnostic otherwise) {
    return node instanceof Scalar scalar && scalar.text().isBlank() ? empty(scalar) : otherwise;
  }

  private static Diagnostic empty(Scalar scalar) {
    return Diagnostic.error("empty-value", scalar.at(), "there is no value here")
        .hint(
            startsRemark(scalar.at())
                ? "a `#` behind a space begins a remark; put a text that starts with one in quotes"
                : "write a value, or delete the line");
  }

  /** Whether a number sign without a space behind it stands where the value should be. */
  private static boolean startsRemark(Span at) {
    return at.source().text().substring(at.end()).matches("(?s) *#[^ \n].*");
  }

  static Diagnostic wrong(Node node, String expected, String hint) {
    return Diagnostic.error(SHAPE, node.at(), "expected " + expected + ", found " + node.kind())
        .hint(hint);
  }
}
