package storyrod.description;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Cell.Use;
import storyrod.description.Node.Scalar;
import storyrod.description.Node.Sequence;
import storyrod.description.Value.Kind;

/** Reads a value as its key asks for it; what cannot be read is reported and left out. */
final class ValueReader {
  private final Context context;
  private final LengthValues lengths;
  private final WordValues words;

  ValueReader(Context context) {
    this.context = context;
    this.lengths = new LengthValues(context);
    this.words = new WordValues(context);
  }

  Optional<Located<?>> read(ValueType type, Node node) {
    return value(type, node).map(value -> new Located<>(value, node.at()));
  }

  private Optional<?> value(ValueType type, Node node) {
    EntryReader entries = new EntryReader(context);
    return switch (type) {
      case ValueType.Lengths all -> lengths(node);
      case ValueType.Numbers all -> numbers(node);
      case ValueType.Section section -> entries.section(section.type(), node);
      case ValueType.SharedSection section -> entries.section(section.type(), node);
      case ValueType.Named named -> entries.named(named.type(), node);
      case ValueType.Assemblies all -> entries.named(PartSections.ASSEMBLY, node);
      case ValueType.Words all -> new WordLists(context).read(node);
      case ValueType.Gifts gifts -> new Shaped(context).gifts(node);
      case ValueType.Place place -> new Shaped(context).place(node);
      case ValueType.PartLists lists -> new Shaped(context).lists(node);
      case ValueType.Others others -> Shapes.mapping(node, context);
      case ValueType.Listed listed -> entries.listed(listed.type(), node);
      case ValueType.Joints joints -> entries.kinds("joint", context.vocabulary().joints(), node);
      case ValueType.Cuts cuts -> entries.kinds("cut", context.vocabulary().cuts(), node);
      case ValueType.Kinds kinds -> entries.kinds(kinds.what(), kinds.types(), node);
      case ValueType.Orders orders -> new Orders(context).list(node);
      case ValueType.Notes notes -> new Orders(context).notes(node);
      case ValueType.OneOrMore some -> oneOrMore(some.each(), node);
      case ValueType.Point point -> Shapes.mapping(node, context).flatMap(lengths::point);
      default -> Shapes.scalar(node, context).flatMap(text -> single(type, text));
    };
  }

  private Optional<?> single(ValueType type, Scalar text) {
    return switch (type) {
      case ValueType.Text words -> Optional.of(text.text().strip());
      case ValueType.LengthValue length ->
          length.mayBeNegative() ? lengths.any(text) : lengths.positive(text);
      case ValueType.Allowance allowance -> lengths.fromZero(text);
      case ValueType.RangeValue range ->
          lengths.range(text, Use.whole(context.scope(), Kind.LENGTH));
      case ValueType.SheetSizeValue size -> lengths.sheet(text);
      case ValueType.Condition condition ->
          context
              .evaluator()
              .valueOf(new Cell("", text, Use.condition(context.scope())))
              .map(Value::holds);
      case ValueType.AngleValue angle -> words.angle(text);
      case ValueType.Number number -> context.evaluate(text, Kind.NUMBER);
      default -> word(type, text);
    };
  }

  private Optional<?> word(ValueType type, Scalar text) {
    return switch (type) {
      case ValueType.Amount amount -> words.amount(text);
      case ValueType.Count count -> words.count(text, count.least());
      case ValueType.YesNo yesNo -> words.yesNo(text);
      case ValueType.Choice choice -> words.choice(text, choice.words());
      case ValueType.AxisName axis -> words.axis(text);
      case ValueType.FaceName face -> words.face(text);
      case ValueType.FaceWord face -> words.faceWord(text);
      case ValueType.EdgeName edge -> words.edge(text);
      case ValueType.PartName part -> words.part(text);
      case ValueType.ItemName item -> words.item(text);
      case ValueType.StockName stock -> words.stock(text);
      case ValueType.MassValue mass -> words.mass(text);
      case ValueType.PriceValue price -> words.price(text);
      case ValueType.VolumeValue volume -> words.volume(text);
      case ValueType.CoverageValue coverage -> words.coverage(text);
      case ValueType.DateValue date -> words.date(text);
      case ValueType.CurrencyValue currency -> words.currency(text);
      case ValueType.Fraction fraction -> words.fraction(text);
      default -> throw new IllegalStateException("bug: no way to read a " + type);
    };
  }

  private Optional<Map<String, Object>> lengths(Node node) {
    return formulas(
        node,
        cell ->
            context
                .evaluator()
                .valueOf(cell)
                .flatMap(value -> lengths.rounded(value.amount(), cell.text().at())));
  }

  private Optional<Map<String, Object>> numbers(Node node) {
    return formulas(node, cell -> context.evaluator().valueOf(cell).map(Value::amount));
  }

  private Optional<Map<String, Object>> formulas(
      Node node, java.util.function.Function<Cell, Optional<?>> result) {
    Map<String, Object> found = new LinkedHashMap<>();
    Shapes.mapping(node, context)
        .ifPresent(
            mapping ->
                mapping
                    .members()
                    .forEach(
                        member -> {
                          NameStyle.check(member.key(), context);
                          if (Shapes.scalar(member.value(), context).isPresent()) {
                            Cell cell = context.scope().values().get(member.key().text());
                            if (cell.scope() != context.scope() || cell.text() == member.value()) {
                              result
                                  .apply(cell)
                                  .ifPresent(value -> found.put(member.key().text(), value));
                            } else {
                              context.diagnostics().add(twice(member.key(), cell));
                            }
                          }
                        }));
    return Optional.of(found);
  }

  private static Diagnostic twice(Scalar name, Cell before) {
    return Diagnostic.error(
            "name-twice",
            name.at(),
            "'" + Quote.of(name.text()) + "' is the name of something else already")
        .also(before.text().at(), "it is here already")
        .hint("give one of the two another name");
  }

  private Optional<List<Located<?>>> oneOrMore(ValueType each, Node node) {
    List<Node> items = node instanceof Sequence sequence ? sequence.items() : List.of(node);
    if (items.isEmpty()) {
      return context.fail(
          Diagnostic.error("empty-value", node.at(), "this list is empty")
              .hint("name at least one, or delete the line"));
    }
    List<Located<?>> found = new ArrayList<>();
    items.forEach(item -> read(each, item).ifPresent(found::add));
    return found.size() == items.size() ? Optional.of(found) : Optional.empty();
  }
}
