package storyrod.description;

import java.util.Optional;
import java.util.function.IntPredicate;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Scalar;
import storyrod.measure.Unit;

/**
 * Reads a project description.
 *
 * <ol>
 *   <li>The text becomes nodes that know their places.
 *   <li>All names are collected, with their formulas.
 *   <li>Every section is read after its list of keys in {@link Sections}; formulas are worked out
 *       as they are needed.
 *   <li>What can only be seen across sections is checked.
 * </ol>
 */
public final class DescriptionReader {
  private final Vocabulary vocabulary;
  private final IntPredicate printable;

  /** A reader for which every character can be printed. */
  public DescriptionReader(Vocabulary vocabulary) {
    this(vocabulary, codePoint -> true);
  }

  /** A reader that refuses characters that no page could show, by their code points. */
  public DescriptionReader(Vocabulary vocabulary, IntPredicate printable) {
    this.vocabulary = vocabulary;
    this.printable = printable;
  }

  /** The description, or none if there is any error; all faults go to the diagnostics. */
  public Optional<Description> read(SourceText source, Diagnostics diagnostics) {
    Diagnostics own = new Diagnostics();
    Optional<Description> description =
        YamlReader.read(source, own).flatMap(root -> root(root, source, own));
    diagnostics.addAll(own.sorted());
    return own.hasErrors() ? Optional.empty() : description;
  }

  private Optional<Description> root(Node root, SourceText source, Diagnostics diagnostics) {
    if (!(root instanceof Mapping mapping)) {
      diagnostics.add(
          Shapes.wrong(
              root, "keys with values", "start with a line such as `project: Window bench`"));
      return Optional.empty();
    }
    Unit unit = unit(mapping);
    Context context =
        new Context(
            Declarations.of(mapping),
            new Evaluator(unit, diagnostics),
            new Figures(unit),
            vocabulary,
            diagnostics);
    Span start =
        mapping.members().isEmpty() ? mapping.at() : mapping.members().getFirst().key().at();
    Entry entry = new EntryReader(context).entry(Sections.PROJECT, mapping, start);
    new Checks(context, mapping).check(entry);
    new PrintableCheck(printable, diagnostics).check(root);
    return diagnostics.hasErrors()
        ? Optional.empty()
        : Optional.of(new DescriptionBuilder(entry, unit).build(source));
  }

  private static Unit unit(Mapping root) {
    boolean mm =
        root.get("units").orElse(root) instanceof Scalar word && word.text().equals(Unit.MM.word());
    return mm ? Unit.MM : Unit.INCH;
  }
}
