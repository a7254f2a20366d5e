package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slots;

/**
 * The centres of a joint's holes or slots, in order.
 *
 * @param along the axis on which they lie in a row
 */
record JointRow(List<Point> centres, Axis along) {
  /** Of a cut that is square to a plane; none of other cuts. */
  static Optional<JointRow> of(Cut cut, Axis normal) {
    return switch (cut) {
      case Cut.Holes holes when holes.from().axis() == normal ->
          Optional.of(new JointRow(holes.centres(), holes.along()));
      case Slots slots when slots.from().axis() == normal ->
          Optional.of(new JointRow(slots.centres(), slots.along()));
      case PocketHoles pockets when pockets.end().axis() == normal ->
          Optional.of(new JointRow(pockets.centres(), along(pockets)));
      default -> Optional.empty();
    };
  }

  private static Axis along(PocketHoles pockets) {
    return Axis.other(pockets.end().axis(), pockets.from().axis());
  }

  boolean isRow() {
    return centres.size() > 1;
  }

  /** Its first alone. */
  JointRow alone() {
    return new JointRow(centres.subList(0, 1), along);
  }

  /** From its first centre to its second. */
  Range step() {
    Length one = centres.get(0).on(along);
    Length two = centres.get(1).on(along);
    return new Range(one.min(two), one.max(two));
  }

  /** From its first centre to its second, or about its only one, and so much beside. */
  Range around(Axis axis, Length beside) {
    Length one = centres.getFirst().on(axis);
    Length two = centres.get(isRow() ? 1 : 0).on(axis);
    return new Range(one.min(two).minus(beside), one.max(two).plus(beside));
  }

  static Box around(Cut.Holes holes) {
    Box box = around(holes.centres(), holes.diameter(), holes.from().axis());
    Length surface = holes.first().on(holes.from().axis());
    Length bottom = surface.minus(holes.depth().times(holes.from().sign()));
    return box.with(holes.from().axis(), new Range(surface.min(bottom), surface.max(bottom)));
  }

  static Box around(PocketHoles pockets) {
    return around(pockets.centres(), pockets.pilot(), pockets.end().axis());
  }

  private static Box around(List<Point> centres, Length diameter, Axis normal) {
    Length half = diameter.dividedBy(2, java.math.RoundingMode.FLOOR);
    return centres.stream().map(each -> around(each, half, normal)).reduce(Box::around).get();
  }

  private static Box around(Point centre, Length half, Axis normal) {
    Box box = new Box(at(centre.x()), at(centre.y()), at(centre.z()));
    for (Axis axis : Stream.of(Axis.values()).filter(each -> each != normal).toList()) {
      Length at = centre.on(axis);
      box = box.with(axis, new Range(at.minus(half), at.plus(half)));
    }
    return box;
  }

  private static Range at(Length length) {
    return new Range(length, length);
  }
}
