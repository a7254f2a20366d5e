package storyrod.description;

import java.math.RoundingMode;
import java.util.Optional;
import storyrod.description.Cell.Side;
import storyrod.description.Cell.Use;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Scalar;
import storyrod.description.Value.Kind;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/** Reads the values that are lengths or made of lengths. */
final class LengthValues {
  /** No tool and no rule tells its ends apart, and no solid can be built of it. */
  private static final Length LEAST_RANGE = Length.micrometres(10);

  private static final Length LONGEST = Length.mm(1_000_000);
  private static final Rational HALF = Rational.of(1, 2);
  private static final String BY = " x ";

  private final Context context;

  LengthValues(Context context) {
    this.context = context;
  }

  Optional<Length> any(Scalar text) {
    return context.evaluate(text, Kind.LENGTH).flatMap(ticks -> rounded(ticks, text.at()));
  }

  /**
   * The nearest tick. Half a tick goes up, wherever zero lies, so that two ends a whole number of
   * ticks apart stay so.
   */
  Optional<Length> rounded(Rational ticks, Span at) {
    if (ticks.compareTo(Rational.of(LONGEST.ticks(), 1)) > 0
        || ticks.compareTo(Rational.of(-LONGEST.ticks(), 1)) < 0) {
      return context.fail(
          Diagnostic.error("too-large", at, "this is too large for a length")
              .hint("nothing may be over 1000 m; look at the units"));
    }
    return Optional.of(ticks.plus(HALF).toLength(RoundingMode.FLOOR));
  }

  Optional<Length> positive(Scalar text) {
    return any(text)
        .flatMap(
            found ->
                found.isPositive() ? Optional.of(found) : notPositive(text, found, "above zero"));
  }

  Optional<Length> fromZero(Scalar text) {
    return any(text)
        .flatMap(
            found ->
                found.isNegative()
                    ? notPositive(text, found, "of zero or more")
                    : Optional.of(found));
  }

  private Optional<Length> notPositive(Scalar text, Length found, String expected) {
    String figure = context.figures().of(found);
    return context.fail(
        Diagnostic.error(
                "not-positive", text.at(), "expected a length " + expected + ", found " + figure)
            .hint("write a length " + expected + ", or look at the sizes it is made from"));
  }

  Optional<Range> range(Scalar text, Use use) {
    Optional<Length> from = end(text, use, Side.FROM);
    Optional<Length> to = end(text, use, Side.TO);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    return forwards(text, from.get(), to.get());
  }

  private Optional<Length> end(Scalar text, Use use, Side side) {
    Cell cell = new Cell("", text, new Use(use.scope(), side, Kind.LENGTH));
    return context.evaluator().valueOf(cell).flatMap(value -> rounded(value.amount(), text.at()));
  }

  private Optional<Range> forwards(Scalar text, Length from, Length to) {
    String ends = context.figures().of(from) + " to " + context.figures().of(to);
    if (to.isShorterThan(from)) {
      return context.fail(
          Diagnostic.error("range", text.at(), "this runs backwards, from " + ends)
              .hint(
                  UnitMixUp.hint(text.text(), context.figures().unit())
                      .orElse(
                          "write the smaller end first, or look at the sizes it is made from")));
    }
    String little = from.equals(to) ? "empty" : "next to nothing";
    return to.minus(from).isShorterThan(LEAST_RANGE)
        ? context.fail(
            Diagnostic.error("range", text.at(), "this is " + little + ", from " + ends)
                .hint("let it end after its start, or look at the sizes it is made from"))
        : Optional.of(new Range(from, to));
  }

  Optional<SheetSize> sheet(Scalar text) {
    int by = text.text().indexOf(BY);
    if (by < 0 || text.text().indexOf(BY, by + 1) >= 0) {
      return context.fail(
          Diagnostic.error("sheet-size", text.at(), "expected a sheet's size, found " + text.kind())
              .hint("write its length along the face grain and its width: `96 x 48`"));
    }
    Optional<Length> length = positive(slice(text, 0, by));
    Optional<Length> width = positive(slice(text, by + BY.length(), text.text().length()));
    return length.flatMap(l -> width.map(w -> new SheetSize(l, w)));
  }

  private static Scalar slice(Scalar text, int from, int to) {
    return new Scalar(text.text().substring(from, to), false, text.part(from, to));
  }

  Optional<PointAt> point(Mapping node) {
    boolean fine = true;
    for (Node.Member member : node.members()) {
      fine &= isCoordinate(member);
    }
    PointAt point =
        new PointAt(coordinate(node, Axis.X), coordinate(node, Axis.Y), coordinate(node, Axis.Z));
    long given =
        java.util.Arrays.stream(Axis.values()).filter(axis -> point.on(axis).isPresent()).count();
    return fine && given == node.members().size() ? Optional.of(point) : Optional.empty();
  }

  private boolean isCoordinate(Node.Member member) {
    Lookup<String> axis =
        Names.word(
            "unknown-key", member.key().text(), java.util.List.of("x", "y", "z"), "coordinate");
    if (axis.found().isEmpty()) {
      context.diagnostics().add(axis.at(member.key().at()));
      return false;
    }
    return Shapes.scalar(member.value(), context).isPresent();
  }

  private Optional<Length> coordinate(Mapping node, Axis axis) {
    return node.get(axis.word())
        .flatMap(
            value ->
                value instanceof Scalar text && !text.text().isEmpty()
                    ? any(text)
                    : Optional.empty());
  }
}
