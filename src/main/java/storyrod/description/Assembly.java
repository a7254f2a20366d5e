package storyrod.description;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import storyrod.description.Cell.Derivation;
import storyrod.description.Scope.PartCells;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Turn;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/** A sub-assembly as the description around it sees it: its names, and how it lies. */
final class Assembly {
  private static final Rational HALF = Rational.of(1, 2);

  private final String name;
  private final Scope inside;
  private final Turn turn;

  /** What is added on each axis after the turn; none on an axis that both frames share. */
  private final Map<Axis, Cell> shift;

  private final Map<Face, Cell> faces;
  private final Map<String, PartCells> seen = new LinkedHashMap<>();
  private final Consumer<Scope> declare;
  private boolean declared;

  private Assembly(String name, Scope inside, Frame frame, Consumer<Scope> declare) {
    this.name = name;
    this.inside = inside;
    this.turn = frame.turn();
    this.shift = frame.shift();
    this.faces = frame.faces();
    this.declare = declare;
  }

  /**
   * A sub-assembly written in place, in the frame of the description around it.
   *
   * @param declare puts its names into its scope, once, as soon as one of them is looked for
   */
  static Assembly inPlace(String name, Scope inside, Consumer<Scope> declare) {
    return new Assembly(name, inside, Frame.SHARED, declare);
  }

  /** A description that is used, with a frame of its own. */
  static Assembly used(String name, Scope inside, Frame frame, Consumer<Scope> declare) {
    return new Assembly(name, inside, frame, declare);
  }

  /**
   * How a used description's frame lies in the one around it.
   *
   * @param faces where it begins and ends, as far as that is known
   */
  record Frame(Turn turn, Map<Axis, Cell> shift, Map<Face, Cell> faces) {
    static final Frame SHARED = new Frame(Turn.NONE, Map.of(), Map.of());
  }

  /** The full name. */
  String name() {
    return name;
  }

  Scope inside() {
    if (!declared) {
      declared = true;
      declare.accept(inside);
    }
    return inside;
  }

  /** Its own faces, where it has a place of its own. */
  PartCells whole() {
    return new PartCells(name, faces);
  }

  /** A part of it, its faces as they look and lie outside. */
  PartCells fromOutside(PartCells part) {
    return shift.isEmpty() ? part : seen.computeIfAbsent(part.name(), full -> placed(part));
  }

  private PartCells placed(PartCells part) {
    Map<Face, Cell> outside = new EnumMap<>(Face.class);
    part.faces().forEach((face, cell) -> outside.put(turn.of(face), placed(face, cell)));
    return new PartCells(part.name(), outside);
  }

  private Cell placed(Face face, Cell own) {
    Face image = turn.of(face.axis());
    String called = own.name().substring(0, own.name().lastIndexOf('.') + 1) + turn.of(face).word();
    Rational sign = Rational.of(image.sign(), 1);
    return Cell.length(
        called,
        own.text(),
        inside,
        new Derivation(
            List.of(own, shift.get(image.axis())),
            amounts -> rounded(amounts.getFirst()).times(sign).plus(amounts.getLast())));
  }

  /**
   * The nearest tick, half a tick up: places are rounded before they are moved or turned, so that
   * the same place is the same from inside and from outside.
   */
  static Rational rounded(Rational ticks) {
    return Rational.of(ticks.plus(HALF).toLength(java.math.RoundingMode.FLOOR).ticks(), 1);
  }

  /** How its frame lies in the one around it; none if a place is faulty. */
  Optional<Placement> placement(Evaluator evaluator) {
    Map<Axis, Length> all = new EnumMap<>(Axis.class);
    for (Map.Entry<Axis, Cell> each : shift.entrySet()) {
      Optional<Value> value = evaluator.valueOf(each.getValue());
      if (value.isEmpty()) {
        return Optional.empty();
      }
      all.put(each.getKey(), value.get().amount().toLength(java.math.RoundingMode.FLOOR));
    }
    return Optional.of(Placement.of(turn, all));
  }
}
