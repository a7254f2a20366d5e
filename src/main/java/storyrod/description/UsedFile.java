package storyrod.description;

import java.util.List;
import java.util.Optional;
import storyrod.description.Library.Found;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Scalar;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;

/** Finds and reads the description that an assembly uses. */
final class UsedFile {
  private static final Mapping NOTHING = (Mapping) Declarations.NONE;

  /** How lengths are printed where a description does not say it. */
  static final LengthFormat USUAL = new LengthFormat(Unit.INCH, 32);

  private final Context context;

  UsedFile(Context context) {
    this.context = context;
  }

  static boolean isNothing(Mapping root) {
    return root == NOTHING;
  }

  static Unit unit(Mapping root) {
    boolean mm =
        root.get("units").orElse(root) instanceof Scalar word && word.text().equals(Unit.MM.word());
    return mm ? Unit.MM : Unit.INCH;
  }

  /** How a project prints lengths; what is wrong with its keys is told where they are read. */
  static LengthFormat format(Mapping root) {
    int denominator =
        root.get("fraction")
            .filter(Scalar.class::isInstance)
            .flatMap(written -> WordValues.denominator(((Scalar) written).text()))
            .orElse(USUAL.denominator());
    return new LengthFormat(unit(root), denominator);
  }

  /** The root of what an entry uses; nothing if it cannot be had, which is reported. */
  Mapping root(Mapping entry) {
    return entry
        .get("use")
        .filter(Scalar.class::isInstance)
        .map(Scalar.class::cast)
        .filter(name -> !name.text().isBlank())
        .flatMap(this::root)
        .orElse(NOTHING);
  }

  private Optional<Mapping> root(Scalar name) {
    Found found = find(name);
    if (found.text().isEmpty()) {
      return context.fail(Diagnostic.error("no-file", name.at(), found.why()).hint(found.hint()));
    }
    SourceText text = found.text().get().usedAt(name.at());
    if (isCircle(text)) {
      return context.fail(
          Diagnostic.error("cycle", name.at(), "'" + name.text() + "' uses itself: " + chain(text))
              .hint("a sub-assembly cannot be part of itself; use another one here"));
    }
    Optional<Node> root = YamlReader.read(text, context.diagnostics());
    return root.flatMap(node -> Shapes.mapping(node, context));
  }

  private Found find(Scalar name) {
    boolean isFile = name.text().endsWith(".yaml") || name.text().endsWith(".yml");
    return isFile
        ? context.library().find(name.text(), name.at().source())
        : Shipped.find(name.text());
  }

  private static boolean isCircle(SourceText text) {
    return outwards(text).stream().skip(1).anyMatch(each -> each.file().equals(text.file()));
  }

  private static String chain(SourceText text) {
    return String.join(" -> ", outwards(text).reversed().stream().map(SourceText::file).toList());
  }

  /** A description, what uses it, and so on. */
  private static List<SourceText> outwards(SourceText text) {
    return java.util.stream.Stream.iterate(
            Optional.of(text), Optional::isPresent, each -> each.get().usedAt().map(Span::source))
        .map(Optional::get)
        .toList();
  }
}
