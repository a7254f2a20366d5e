package storyrod.drawing;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/**
 * The centres of a joint's holes or slots, in order.
 *
 * @param along the axis on which they lie in a row
 */
record JointRow(List<Point> centres, Axis along) {
  /** Of a cut that is square to a plane; none of other cuts. */
  static Optional<JointRow> of(Cut cut, Axis normal) {
    return switch (cut) {
      case Cut.Holes holes ->
          new JointRow(holes.centres(), holes.along()).square(holes.from(), normal);
      case Slots slots -> new JointRow(slots.centres(), slots.along()).square(slots.from(), normal);
      case PocketHoles pockets ->
          new JointRow(pockets.centres(), along(pockets)).square(pockets.end(), normal);
      case Cut.Trench trench -> Optional.empty();
      case Cut.Tenon tenon -> Optional.empty();
      case Comb comb -> Optional.empty();
      case Cut.Shaped shaped -> Optional.empty();
      case Cut.Roundover roundover -> Optional.empty();
      case InPlace inPlace -> Optional.empty();
      case Slanted.Slope slope -> Optional.empty();
      case Slanted.Housing housing -> Optional.empty();
      case Dovetails dovetails -> Optional.empty();
      case SplineSlot slot -> Optional.empty();
    };
  }

  /** The row itself if its face looks along an axis. */
  private Optional<JointRow> square(Face face, Axis normal) {
    return Optional.of(this).filter(row -> face.axis() == normal);
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
    Length half = diameter.dividedBy(2, RoundingMode.FLOOR);
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
