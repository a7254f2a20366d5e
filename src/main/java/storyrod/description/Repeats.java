package storyrod.description;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.description.Cell.Derivation;
import storyrod.description.Cell.Side;
import storyrod.description.Cell.Use;
import storyrod.description.Expression.Stretch;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;
import storyrod.description.Scope.Instance;
import storyrod.description.Scope.Nth;
import storyrod.description.Scope.PartCells;
import storyrod.description.Value.Kind;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Rational;

/**
 * Says how many parts or sub-assemblies an entry stands for, and gives each of several its share of
 * the space: the names {@code each.left} and so on, and its number {@code nth}.
 */
final class Repeats {
  private static final int MOST = 1000;

  /** Past the end of any formula. */
  private static final int WHOLE = 1_000_000;

  private static final Rational TWO = Rational.of(2, 1);

  private final Context context;

  Repeats(Context context) {
    this.context = context;
  }

  /** The ones that there are. An entry whose condition is at fault is taken to be there. */
  List<Instance> of(Scalar name, Node entry) {
    if (!holds(entry)) {
      return List.of();
    }
    Optional<Node> repeat = Declarations.child(entry, "repeat");
    return repeat
        .map(how -> how instanceof Mapping keys ? several(name, keys) : misshapen(name, how))
        .orElseGet(() -> List.of(new Instance(name.text(), context.scope())));
  }

  /** A count without its key is reported where it is read, and meant all the same. */
  private List<Instance> misshapen(Scalar name, Node repeat) {
    boolean isCount = repeat instanceof Scalar text && text.text().matches("[1-9][0-9]?");
    int count = isCount ? Integer.parseInt(((Scalar) repeat).text()) : 1;
    return IntStream.rangeClosed(1, count)
        .mapToObj(number -> instance(name, new Nth(number, count)))
        .peek(each -> each.scope().parts().put("each", faulty(repeat.at())))
        .toList();
  }

  /** A share whose fault is reported where it is read, so that no name of it need be. */
  private PartCells faulty(Span at) {
    Map<Face, Cell> faces = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      faces.put(face, Cell.broken("each", at, context.scope()));
    }
    return new PartCells("each", faces);
  }

  /** Whether an entry is there, as far as its condition says. */
  boolean holds(Node entry) {
    if (Declarations.child(entry, "when").orElse(Declarations.NONE) instanceof Scalar condition
        && !condition.text().isBlank()) {
      Cell cell = new Cell("", condition, Use.condition(context.scope()));
      return known(condition, context.evaluator().valueOf(cell)).map(Value::holds).orElse(true);
    }
    return true;
  }

  private <T> Optional<T> known(Scalar formula, Optional<T> value) {
    if (value.isEmpty()) {
      context.evaluator().giveUp(formula);
    }
    return value;
  }

  private List<Instance> several(Scalar name, Mapping repeat) {
    new RepeatCheck(context, repeat).check();
    List<Instance> all = new ArrayList<>();
    int count = count(repeat);
    for (int number = 1; number <= count; number++) {
      Nth nth = new Nth(number, count);
      Instance instance = instance(name, nth);
      beside(repeat, nth, instance.scope());
      share(repeat, nth)
          .or(() -> Optional.of(faulty(repeat.at())).filter(each -> isPlaced(repeat)))
          .ifPresent(faces -> instance.scope().parts().put("each", faces));
      all.add(instance);
    }
    return all;
  }

  private Instance instance(Scalar name, Nth nth) {
    Scope scope = context.scope().within();
    scope.nth().put(context.scope().fullName(name.text()), nth);
    Value number = new Value(Rational.of(nth.number(), 1), Kind.NUMBER);
    scope.values().put("nth", Cell.of("nth", name, scope, number));
    return new Instance(name.text() + "-" + nth.number(), scope);
  }

  /** Whether something is said of where they lie, so that what is missing of it is reported. */
  private static boolean isPlaced(Mapping repeat) {
    return Stream.of("along", "over", "first", "step").anyMatch(key -> repeat.get(key).isPresent());
  }

  /** Names for parts of which there is another beside each, such as the wall left of each bay. */
  private void beside(Mapping repeat, Nth nth, Scope scope) {
    if (repeat.get("beside").orElse(repeat) instanceof Mapping lists && lists != repeat) {
      for (Member list : lists.members()) {
        List<String> paths = Node.texts(list.value());
        scope
            .aliases()
            .put(list.key().text(), new Alias(context.scope(), () -> all(paths), nth.number() - 1));
      }
    }
  }

  private List<String> all(List<String> paths) {
    Expansion expansion = new Expansion(context.scope());
    return paths.stream().flatMap(path -> expansion.names(path).stream()).toList();
  }

  /** What is no count is reported where it is read, and taken as one. */
  private int count(Mapping repeat) {
    if (repeat.get("count").orElse(repeat) instanceof Scalar text && !text.text().isBlank()) {
      Optional<Rational> count = known(text, context.evaluate(text, Kind.NUMBER));
      return count
          .filter(found -> found.isWhole() && found.signum() >= 0)
          .filter(found -> found.compareTo(Rational.of(MOST, 1)) <= 0)
          .map(found -> found.numerator().intValueExact())
          .orElse(1);
    }
    return 1;
  }

  private Optional<PartCells> share(Mapping repeat, Nth nth) {
    Optional<Axis> axis =
        text(repeat, "along")
            .flatMap(
                along ->
                    List.of(Axis.values()).stream()
                        .filter(each -> each.word().equals(along.text()))
                        .findFirst());
    return axis.flatMap(along -> share(repeat, nth, along));
  }

  private Optional<PartCells> share(Mapping repeat, Nth nth, Axis axis) {
    Optional<Derivation> start =
        repeat.get("over").isPresent() ? over(repeat, nth, true) : stepped(repeat, nth, true);
    Optional<Derivation> end =
        repeat.get("over").isPresent() ? over(repeat, nth, false) : stepped(repeat, nth, false);
    if (start.isEmpty() || end.isEmpty()) {
      return Optional.empty();
    }
    Scalar at = text(repeat, "over").or(() -> text(repeat, "first")).orElseThrow();
    Map<Face, Cell> faces = new EnumMap<>(Face.class);
    faces.put(Face.of(axis, -1), Cell.length("each", at, context.scope(), start.get()));
    faces.put(Face.of(axis, 1), Cell.length("each", at, context.scope(), end.get()));
    return Optional.of(new PartCells("each", faces));
  }

  private static Optional<Scalar> text(Mapping repeat, String key) {
    return repeat
        .get(key)
        .filter(Scalar.class::isInstance)
        .map(Scalar.class::cast)
        .filter(text -> !text.text().isBlank());
  }

  private Cell cell(Mapping repeat, String key, Side side) {
    Use use = new Use(context.scope(), side, Kind.LENGTH);
    return text(repeat, key)
        .map(text -> new Cell(key, text, use))
        .orElseGet(
            () ->
                Cell.of(
                    key,
                    new Scalar("", false, repeat.at()),
                    context.scope(),
                    Value.length(Rational.ZERO)));
  }

  /** Equal centres: the first begins at {@code first}, each further one a step on. */
  private Optional<Derivation> stepped(Mapping repeat, Nth nth, boolean start) {
    if (text(repeat, "first").isEmpty()) {
      return Optional.empty();
    }
    List<Cell> needs =
        List.of(
            cell(repeat, "first", Side.WHOLE),
            cell(repeat, "step", Side.WHOLE),
            cell(repeat, "size", Side.WHOLE));
    Rational before = Rational.of(nth.number() - 1L, 1);
    return Optional.of(
        new Derivation(
            needs,
            have ->
                have.get(0)
                    .plus(have.get(1).times(before))
                    .plus(start ? Rational.ZERO : have.get(2))));
  }

  private Optional<Derivation> over(Mapping repeat, Nth nth, boolean start) {
    if (text(repeat, "over").isEmpty()) {
      return Optional.empty();
    }
    boolean spaced = text(repeat, "size").isPresent();
    List<Cell> needs =
        List.of(
            cell(repeat, "over", Side.FROM),
            cell(repeat, "over", Side.TO),
            cell(repeat, spaced ? "size" : "gap", Side.WHOLE),
            cell(repeat, "shorter-by", Side.WHOLE),
            cell(repeat, "longer-by", Side.WHOLE));
    return Optional.of(
        new Derivation(
            needs, have -> spaced ? spaced(have, nth, start) : filled(have, nth, start)));
  }

  /** Equal gaps before, between and after pieces of one size. */
  private static Rational spaced(List<Rational> have, Nth nth, boolean start) throws FormulaFault {
    Rational count = Rational.of(nth.count(), 1);
    Rational room = have.get(1).minus(have.get(0));
    Rational size = have.get(2);
    Rational gap = room.minus(size.times(count)).dividedBy(count.plus(Rational.ONE));
    if (gap.signum() < 0) {
      throw noRoom(nth, "of this size do not fit into this space");
    }
    Rational number = Rational.of(nth.number(), 1);
    Rational from =
        have.get(0).plus(gap.times(number)).plus(size.times(number.minus(Rational.ONE)));
    return start ? from : from.plus(size);
  }

  /** The whole space but for the gaps, each piece shorter or longer than the one before it. */
  private static Rational filled(List<Rational> have, Nth nth, boolean start) throws FormulaFault {
    Rational count = Rational.of(nth.count(), 1);
    Rational less = have.get(3).minus(have.get(4));
    Rational gap = have.get(2);
    Rational room = have.get(1).minus(have.get(0));
    Rational pairs = count.times(count.minus(Rational.ONE)).dividedBy(TWO);
    Rational first =
        room.minus(gap.times(count.minus(Rational.ONE))).plus(less.times(pairs)).dividedBy(count);
    Rational before = Rational.of(nth.number() - 1L, 1);
    Rational size = first.minus(less.times(before));
    if (size.signum() <= 0) {
      throw noRoom(nth, "with these gaps and steps do not fit into this space");
    }
    Rational steps = before.times(before.minus(Rational.ONE)).dividedBy(TWO);
    Rational from = have.get(0).plus(first.plus(gap).times(before)).minus(less.times(steps));
    return start ? from : from.plus(size);
  }

  private static FormulaFault noRoom(Nth nth, String why) {
    return new FormulaFault(
        "repeat",
        new Stretch(0, WHOLE),
        nth.count() + " " + why,
        "give them more room, or take fewer or smaller ones");
  }
}
