package storyrod.description;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Assembly.Frame;
import storyrod.description.Cell.Derivation;
import storyrod.description.Cell.Side;
import storyrod.description.Cell.Use;
import storyrod.description.Expression.Stretch;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Scalar;
import storyrod.description.Scope.Instance;
import storyrod.description.Value.Kind;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Turn;
import storyrod.measure.Rational;

/** Takes a description as a sub-assembly: finds it, gives it its values, and places it. */
final class Uses {
  private static final Map<Axis, String> EXTENTS =
      Map.of(Axis.X, "width", Axis.Y, "depth", Axis.Z, "height");

  private final Context context;
  private final Scope outside;

  /** In a context whose scope is that of the one instance. */
  Uses(Context context) {
    this.context = context;
    this.outside = context.scope();
  }

  /** The size by which a description says how far it reaches on an axis. */
  static String extent(Axis axis) {
    return EXTENTS.get(axis);
  }

  Assembly of(Instance instance, Mapping entry) {
    Mapping used = new UsedFile(context).root(entry);
    Scope inside = outside.ofUse(instance.name(), UsedFile.unit(used));
    inside.setText(used);
    new Given(context, used).into(inside, entry);
    declareExtents(used, inside);
    Frame frame = frame(instance, entry, inside);
    return Assembly.used(
        outside.fullName(instance.name()),
        inside,
        frame,
        scope -> new Declarations(context.in(scope)).declare(used));
  }

  private Frame frame(Instance instance, Mapping entry, Scope inside) {
    Turn turn = turn(entry);
    Map<Axis, Cell> shift = new EnumMap<>(Axis.class);
    Map<Face, Cell> faces = new EnumMap<>(Face.class);
    for (Axis own : Axis.values()) {
      Face image = turn.of(own);
      Ends ends = ends(instance, entry, image.axis(), inside, own);
      shift.put(image.axis(), image.sign() > 0 ? ends.from() : ends.to());
      faces.put(Face.of(image.axis(), -1), ends.from());
      faces.put(Face.of(image.axis(), 1), ends.to());
    }
    return new Frame(turn, shift, faces);
  }

  private record Ends(Cell from, Cell to) {}

  /** Where it begins and ends on an axis outside; a range gives it its extent. */
  private Ends ends(Instance instance, Mapping entry, Axis axis, Scope inside, Axis own) {
    Optional<Scalar> place = place(entry, axis);
    String called = outside.fullName(instance.name()) + ".";
    Scalar at = place.orElseGet(() -> new Scalar("", false, entry.at()));
    String from = called + Face.of(axis, -1).word();
    String to = called + Face.of(axis, 1).word();
    if (place.isPresent() && isRange(place.get())) {
      Cell start = rounded(from, at, Side.FROM);
      Cell end = rounded(to, at, Side.TO);
      needsExtent(inside, own, at);
      inside.values().put(extent(own), between(extent(own), at, start, end));
      return new Ends(start, end);
    }
    Cell start =
        place.isPresent()
            ? rounded(from, at, Side.WHOLE)
            : Cell.of(from, at, outside, Value.length(Rational.ZERO));
    return new Ends(start, after(to, at, start, extentOf(inside, own, entry)));
  }

  private void needsExtent(Scope inside, Axis own, Scalar at) {
    if (!inside.values().containsKey(extent(own)) && !inside.isUnread()) {
      context
          .diagnostics()
          .add(
              Diagnostic.error(
                      "no-extent",
                      at.at(),
                      "what is used here has no size '" + extent(own) + "' to be given by a range")
                  .hint("write only where it begins, or give the description that size"));
    }
  }

  private static Optional<Scalar> place(Mapping entry, Axis axis) {
    return Declarations.child(entry.get("in").orElse(Declarations.NONE), axis.word())
        .filter(Scalar.class::isInstance)
        .map(Scalar.class::cast)
        .filter(text -> !text.text().isBlank());
  }

  static boolean isRange(Scalar text) {
    return text.text().matches("(?s).*\\sto\\s.*");
  }

  private Cell rounded(String name, Scalar text, Side side) {
    Cell exact = new Cell(name, text, new Use(outside, side, Kind.LENGTH));
    return Cell.length(
        name,
        text,
        outside,
        new Derivation(List.of(exact), have -> Assembly.rounded(have.getFirst())));
  }

  private Cell between(String name, Scalar at, Cell from, Cell to) {
    return Cell.length(
        name,
        at,
        outside,
        new Derivation(List.of(from, to), have -> have.getLast().minus(have.getFirst())));
  }

  private Cell after(String name, Scalar at, Cell from, Cell extent) {
    return Cell.length(
        name,
        at,
        outside,
        new Derivation(
            List.of(from, extent), have -> have.getFirst().plus(Assembly.rounded(have.getLast()))));
  }

  /** What the description itself says of its extent; a fault where it is asked for and unsaid. */
  private Cell extentOf(Scope inside, Axis own, Mapping entry) {
    String name = extent(own);
    Cell said = inside.values().get(name);
    if (said != null) {
      return said;
    }
    return entry.get("use").orElse(entry) instanceof Scalar use && !inside.isUnread()
        ? Cell.length(name, use, outside, new Derivation(List.of(), have -> unsaid(use, own)))
        : Cell.broken(name, entry.at(), inside);
  }

  private static Rational unsaid(Scalar use, Axis own) throws FormulaFault {
    throw new FormulaFault(
        "no-extent",
        new Stretch(0, use.text().length()),
        "%s has no size '%s', so nothing says how far it reaches on its own %s"
            .formatted(Quote.of(use.text()), extent(own), own.word()),
        "give it that size: by it a mirrored or turned sub-assembly is placed, and its far face is"
            + " found");
  }

  /** The sizes that say how far it reaches are needed to place it, before its other names. */
  private static void declareExtents(Mapping used, Scope inside) {
    Node sizes = used.get("sizes").orElse(Declarations.NONE);
    for (String name : EXTENTS.values().stream().sorted().toList()) {
      Declarations.child(sizes, name)
          .filter(Scalar.class::isInstance)
          .ifPresent(
              size ->
                  inside
                      .values()
                      .putIfAbsent(
                          name, new Cell(name, (Scalar) size, Use.whole(inside, Kind.LENGTH))));
    }
  }

  private static Turn turn(Mapping entry) {
    Turn turn = Turn.NONE;
    Optional<Axis> mirror = axis(entry.get("mirror"));
    if (mirror.isPresent()) {
      turn = turn.then(Turn.mirrored(mirror.get()));
    }
    Node turned = entry.get("turn").orElse(Declarations.NONE);
    Optional<Axis> about = axis(Declarations.child(turned, "about"));
    Optional<Integer> quarters = quarters(Declarations.child(turned, "by"));
    return about.isPresent() && quarters.isPresent()
        ? turn.then(Turn.quarters(about.get(), quarters.get()))
        : turn;
  }

  private static Optional<Axis> axis(Optional<Node> word) {
    return word.filter(Scalar.class::isInstance)
        .map(text -> ((Scalar) text).text())
        .flatMap(
            text ->
                new ArrayList<>(List.of(Axis.values()))
                    .stream().filter(axis -> axis.word().equals(text)).findFirst());
  }

  private static Optional<Integer> quarters(Optional<Node> degrees) {
    return degrees
        .filter(Scalar.class::isInstance)
        .map(text -> ((Scalar) text).text())
        .filter(text -> text.matches("90|180|270"))
        .map(text -> Integer.parseInt(text) / 90);
  }
}
