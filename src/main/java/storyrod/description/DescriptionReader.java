package storyrod.description;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import storyrod.description.Node.Mapping;
import storyrod.measure.LengthFormat;

/**
 * Reads a project description.
 *
 * <ol>
 *   <li>The text becomes nodes that know their places; files that it shares and the option that is
 *       chosen are put in.
 *   <li>All names are collected, with their formulas; which parts there are is settled.
 *   <li>Every section is read after its list of keys in {@link Sections}; formulas are worked out
 *       as they are needed.
 *   <li>What can only be seen across sections is checked.
 *   <li>Sub-assemblies are brought into the frame of the piece.
 * </ol>
 */
public final class DescriptionReader {
  private final Vocabulary vocabulary;
  private final IntPredicate printable;
  private final Library library;

  /** A reader for which every character can be printed, and no text names further files. */
  public DescriptionReader(Vocabulary vocabulary) {
    this(vocabulary, codePoint -> true, Library.none());
  }

  /** A reader that refuses characters that no page could show, by their code points. */
  public DescriptionReader(Vocabulary vocabulary, IntPredicate printable, Library library) {
    this.vocabulary = vocabulary;
    this.printable = printable;
    this.library = library;
  }

  /** The description, or none if there is any error; all faults go to the diagnostics. */
  public Optional<Description> read(SourceText source, Diagnostics diagnostics) {
    return read(source, Optional.empty(), diagnostics);
  }

  /** The description with one of its options. */
  public Optional<Description> read(
      SourceText source, Optional<String> option, Diagnostics diagnostics) {
    Diagnostics own = new Diagnostics();
    Optional<Node> root = YamlReader.read(source, own);
    Optional<Description> description = root.flatMap(node -> root(node, option, own));
    Optional<OptionFaults> options =
        root.filter(Mapping.class::isInstance).map(node -> new OptionFaults((Mapping) node));
    Set<String> told = new TreeSet<>();
    own.sorted().stream()
        .filter(each -> !each.code().equals(Diagnostic.FOLLOW_UP))
        .map(each -> options.map(all -> all.named(each)).orElse(each))
        .filter(each -> told.add(essence(each)))
        .forEach(diagnostics::add);
    return own.hasErrors() ? Optional.empty() : description;
  }

  /** The names of a description's options in their order, whatever else is wrong with it. */
  public static List<String> options(SourceText source) {
    return YamlReader.read(source, new Diagnostics()).stream()
        .flatMap(root -> Declarations.child(root, "options").stream())
        .filter(Mapping.class::isInstance)
        .flatMap(options -> ((Mapping) options).members().stream())
        .map(option -> option.key().text())
        .toList();
  }

  /**
   * What is wrong in an entry that is repeated is told once, whatever number it comes to in each.
   */
  private static String essence(Diagnostic fault) {
    Span at = fault.at();
    return String.join(
        " ",
        at.source().file(),
        String.valueOf(at.start()),
        String.valueOf(at.end()),
        fault.code(),
        fault.message().replaceAll("[0-9]+([./ ][0-9]+)*", "0"));
  }

  private Optional<Description> root(Node root, Optional<String> option, Diagnostics diagnostics) {
    if (!(root instanceof Mapping written)) {
      diagnostics.add(
          Shapes.wrong(
              root, "keys with values", "start with a line such as `project: Window bench`"));
      return Optional.empty();
    }
    Mapping shared = new Shared(library, diagnostics).into(written);
    Mapping mapping = new OptionChoice(shared, diagnostics).chosen(option);
    LengthFormat format = UsedFile.format(mapping);
    Context context =
        new Context(
            Scope.ofProject(format),
            new Evaluator(diagnostics),
            new Figures(format.unit()),
            vocabulary,
            library,
            diagnostics);
    new Declarations(context).declare(mapping);
    Span start =
        mapping.members().isEmpty() ? mapping.at() : mapping.members().getFirst().key().at();
    Entry entry = new EntryReader(context).entry(Sections.PROJECT, mapping, start);
    Block project = Block.ofProject(context, mapping, entry);
    Checks.checkAll(project);
    new OptionFaults(shared).check(context, option);
    new PrintableCheck(printable, diagnostics).check(root);
    return diagnostics.hasErrors()
        ? Optional.empty()
        : Optional.of(new DescriptionBuilder(project, format).build(root.at().source()));
  }
}
