package storyrod.build;

import java.math.RoundingMode;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.build.Seat.How;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Finds where parts have to be set by hand, because nothing in a joint holds them in their place:
 * for each joint without a slot, on both axes of the faces that meet; for one with a slot that runs
 * on past its part, along the slot.
 */
public final class Seats {
  private final Piece piece;
  private final Operation operation;
  private final List<Part> standing;
  private final Set<String> fronts;

  private Seats(Finder finder, Operation operation, List<String> standing) {
    this.piece = finder.piece();
    this.operation = operation;
    this.fronts = finder.fronts();
    this.standing =
        standing.stream()
            .filter(name -> !operation.parts().contains(name))
            .map(piece::part)
            .toList();
  }

  /** Finds the seats of a piece, whose fronts are looked for once. */
  public static Finder in(Piece piece) {
    return new Finder(piece, Fronts.of(piece));
  }

  /**
   * What seats are found with.
   *
   * @param fronts the full names of the fronts of drawers
   */
  public record Finder(Piece piece, Set<String> fronts) {
    /**
     * The seats of what a fitting operation puts in place. A whole sub-assembly is set by its flush
     * sides only, on every axis that has one.
     */
    public List<Seat> of(Operation operation, List<String> standing) {
      return new Seats(this, operation, standing).all();
    }
  }

  private List<Seat> all() {
    Set<Seat> all = new LinkedHashSet<>();
    operation.joints().stream()
        .filter(joint -> !isShifted(joint))
        .forEach(joint -> all.addAll(isHeldInPlace(joint) ? along(joint) : of(joint)));
    return all.stream()
        .filter(seat -> operation.parts().size() == 1 || !isSettled(seat, all))
        .toList();
  }

  /** Whether the sides of a sub-assembly that can be seen settle its place already. */
  private boolean isSettled(Seat seat, Set<Seat> all) {
    Part on = piece.part(seat.on());
    boolean isSeen = on.box().at(seat.face()).equals(on.shoulder().at(seat.face()));
    return !(seat.how() == How.FLUSH && isSeen)
        && all.stream()
            .filter(other -> other.how() == How.FLUSH && !other.equals(seat))
            .anyMatch(other -> other.face().axis() == seat.face().axis());
  }

  /** Whether its place is found by eye: a front by its gaps, a top by its overhangs. */
  private boolean isShifted(Joint joint) {
    return fronts.contains(operation.target())
        || joint.fasteners().stream().anyMatch(each -> piece.kind(each.item()).isTopFastener());
  }

  /** Whether this joint, or another of the same two parts, is a slot. */
  private boolean isHeldInPlace(Joint joint) {
    return takes(joint.second(), joint.first())
        || takes(joint.first(), joint.second())
        || Pegged.isPegged(piece.part(joint.first()), piece.part(joint.second()));
  }

  private boolean takes(String part, String other) {
    return piece.part(part).cuts().stream().filter(Cut::takesIn).anyMatch(cut -> cut.isFor(other));
  }

  private List<Seat> along(Joint joint) {
    return new OpenHousings(piece)
        .of(joint).stream()
            .flatMap(
                each ->
                    each.axes().stream()
                        .flatMap(axis -> seat(joint, each.housed(), each.into(), axis).stream()))
            .toList();
  }

  private List<Seat> of(Joint joint) {
    boolean isFirst = operation.parts().contains(joint.first());
    Part moving = piece.part(isFirst ? joint.first() : joint.second());
    Part other = piece.part(isFirst ? joint.second() : joint.first());
    if (moving.pose().isTurned() || other.pose().isTurned()) {
      return LeaningSeats.of(piece, moving, other);
    }
    return Arrays.stream(Axis.values())
        .filter(axis -> axis != joint.firstFace().axis())
        .flatMap(axis -> seat(joint, moving, other, axis).stream())
        .toList();
  }

  private Optional<Seat> seat(Joint joint, Part moving, Part other, Axis axis) {
    Range own = moving.shoulder().on(axis);
    Range its = other.shoulder().on(axis);
    if (own.equals(its)) {
      return Optional.empty();
    }
    if (own.from().equals(its.from())) {
      return Optional.of(flush(moving, other, Face.of(axis, -1)));
    }
    if (own.to().equals(its.to())) {
      return Optional.of(flush(moving, other, Face.of(axis, 1)));
    }
    return Optional.of(
        its.contains(own)
            ? inside(shown(joint, moving, other, axis), other, axis)
            : own.contains(its)
                ? over(joint, moving, other, nearer(its, own, axis))
                : past(moving, other, axis));
  }

  /** The part of a sub-assembly that is seen where it is set, if the joined one ends behind it. */
  private Part shown(Joint joint, Part moving, Part other, Axis axis) {
    Face face = nearer(moving.shoulder().on(axis), other.shoulder().on(axis), axis);
    List<Part> unit = operation.parts().stream().map(piece::part).toList();
    return new Outmost(unit, joint)
        .beyond(moving, face)
        .filter(part -> other.box().on(axis).contains(part.box().on(axis)))
        .orElse(moving);
  }

  /** A board laid over more than it is joined to is set by what is seen at its edge. */
  private Seat over(Joint joint, Part moving, Part other, Face face) {
    if (isNailedBlind(joint, moving)) {
      Length half = other.shoulder().size(face.axis()).dividedBy(2, RoundingMode.HALF_EVEN);
      Seat near = from(other, moving, face);
      return new Seat(How.MIDDLE, near.part(), near.on(), face, near.distance().plus(half));
    }
    return new Outmost(standing, joint)
        .beyond(other, face)
        .filter(part -> moving.thickness() == joint.firstFace().axis())
        .filter(part -> !Outmost.isFurther(part, moving, face))
        .map(part -> by(moving, part, face))
        .orElseGet(() -> from(other, moving, face));
  }

  private static Seat by(Part moving, Part part, Face face) {
    Length out = moving.shoulder().at(face).minus(part.box().at(face)).abs();
    return seat(out.isZero() ? How.FLUSH : How.PAST, moving, part, face, out);
  }

  /** Whether brads are driven through it into what nobody sees behind it. */
  private boolean isNailedBlind(Joint joint, Part moving) {
    return joint.driven().filter(driven -> driven.part().equals(moving.name())).isPresent()
        && joint.fasteners().stream().anyMatch(each -> piece.kind(each.item()) == ItemKind.BRAD);
  }

  /** An end that is let into another part is out of sight: that part's face shows instead. */
  private Seat flush(Part moving, Part other, Face face) {
    return hiding(moving, other, face)
        .map(wall -> seat(How.AGAINST, moving, wall, face.opposite(), Length.ZERO))
        .or(() -> covering(other, face).map(strip -> besides(moving, strip, face)))
        .orElseGet(() -> seat(How.FLUSH, moving, other, face, Length.ZERO));
  }

  /** Against what covers a face, where it meets it, else as far inside it as that is thick. */
  private static Seat besides(Part moving, Part strip, Face face) {
    return faces(strip.box(), moving.box(), face.axis())
        ? seat(How.AGAINST, moving, strip, face.opposite(), Length.ZERO)
        : pastWall(moving, strip, face);
  }

  /** The standing part that was put over a whole face, so that no finger feels it any more. */
  private Optional<Part> covering(Part other, Face face) {
    return standing.stream()
        .filter(strip -> strip.box().at(face.opposite()).equals(other.box().at(face)))
        .filter(
            strip ->
                Stream.of(Axis.values())
                    .filter(axis -> axis != face.axis())
                    .allMatch(axis -> strip.box().on(axis).contains(other.shoulder().on(axis))))
        .findFirst();
  }

  private Seat inside(Part moving, Part other, Axis axis) {
    Face face = nearer(moving.shoulder().on(axis), other.shoulder().on(axis), axis);
    Length off = moving.shoulder().at(face).minus(other.shoulder().at(face)).abs();
    return hiding(moving, other, face)
        .map(wall -> seat(How.AGAINST, moving, wall, face.opposite(), off))
        .or(() -> around(moving, other, face).map(wall -> pastWall(moving, wall, face)))
        .orElseGet(() -> from(moving, other, face));
  }

  /** From the outer face of a wall, where no rule reaches what ends inside the wall. */
  private static Seat pastWall(Part moving, Part wall, Face face) {
    Length off = moving.shoulder().at(face).minus(wall.box().at(face)).abs();
    return seat(How.AGAINST, moving, wall, face, off);
  }

  /** The standing part in whose rabbet an end of another lies, if it does not reach past that. */
  private Optional<Part> around(Part moving, Part other, Face face) {
    Length end = other.box().at(face);
    return standing.stream()
        .filter(wall -> !wall.equals(other) && faces(wall.box(), other.box(), face.axis()))
        .filter(
            wall ->
                wall.box().on(face.axis()).from().isShorterThan(end)
                    && end.isShorterThan(wall.box().on(face.axis()).to()))
        .filter(wall -> !faces(wall.box(), moving.box(), face.axis()))
        .findFirst();
  }

  private static Seat from(Part part, Part on, Face face) {
    return seat(How.FROM, part, on, face, part.shoulder().at(face).minus(on.box().at(face)).abs());
  }

  private static Seat past(Part moving, Part other, Axis axis) {
    int sign =
        moving.shoulder().on(axis).from().isShorterThan(other.shoulder().on(axis).from()) ? -1 : 1;
    Face face = Face.of(axis, sign);
    Length out = moving.shoulder().at(face).minus(other.shoulder().at(face)).abs();
    return seat(How.PAST, moving, other, face, out);
  }

  private static Seat seat(How how, Part part, Part on, Face face, Length distance) {
    return new Seat(how, part.name(), on.name(), face, distance);
  }

  private static Face nearer(Range inner, Range outer, Axis axis) {
    Length before = inner.from().minus(outer.from());
    Length behind = outer.to().minus(inner.to());
    return Face.of(axis, behind.isShorterThan(before) ? 1 : -1);
  }

  /** The standing part into which an end of another is let, if it reaches past what is set. */
  private Optional<Part> hiding(Part moving, Part other, Face face) {
    if (other.box().at(face).equals(other.shoulder().at(face))) {
      return Optional.empty();
    }
    return standing.stream()
        .filter(wall -> wall.box().at(face.opposite()).equals(other.shoulder().at(face)))
        .filter(wall -> faces(wall.box(), moving.box(), face.axis()))
        .findFirst();
  }

  private static boolean faces(Box wall, Box box, Axis axis) {
    return Stream.of(Axis.values())
        .filter(each -> each != axis)
        .allMatch(each -> wall.on(each).overlaps(box.on(each)));
  }
}
