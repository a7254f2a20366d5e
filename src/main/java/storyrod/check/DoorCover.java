package storyrod.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A door before its opening that does not reach over the edges of what it closes. */
final class DoorCover implements Check {
  /** The hinges may hold a door so far before the case. */
  private static final Length BEFORE = Length.mm(4);

  /** A part whose edge is so near the door's was meant to be covered by it. */
  private static final Length NEAR = Length.mm(25);

  private static final Length LEAST = Length.mm(3);

  @Override
  public String code() {
    return "door-cover";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A door that lies before its opening laps over the edges of the opening by 3 mm (1/8 in) or"
            + " more on each side where a part of the case stands near its edge.",
        "Common practice, from memory.",
        "It looks at the middle of each side of the door, and at parts whose front lies within 4"
            + " mm of the door's back and whose edge is within 25 mm of the door's.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    List<Hung> doors = Hung.doors(piece);
    List<Part> still =
        piece.parts().stream().filter(part -> nesting.looseUnit(part.name()).isEmpty()).toList();
    return doors.stream()
        .filter(door -> still.stream().noneMatch(part -> isInset(door.box(), part.bounds())))
        .flatMap(
            door ->
                Stream.of(Face.LEFT, Face.RIGHT, Face.BOTTOM, Face.TOP)
                    .flatMap(side -> finding(piece, still, door, side).stream()))
        .toList();
  }

  private Optional<Diagnostic> finding(Piece piece, List<Part> still, Hung door, Face side) {
    Box box = door.box();
    return still.stream()
        .filter(part -> isBehind(box, part.bounds()) && stands(box, part.bounds(), side))
        .reduce((one, two) -> lap(box, one, side).isShorterThan(lap(box, two, side)) ? two : one)
        .filter(part -> lap(box, part, side).isShorterThan(LEAST))
        .map(part -> finding(piece, door, part, side));
  }

  /** Whether a part stands beside a door in the door's own plane. */
  private static boolean isInset(Box door, Box part) {
    boolean isNear =
        Stream.of(Face.LEFT, Face.RIGHT, Face.BOTTOM, Face.TOP)
            .anyMatch(side -> door.extended(side, NEAR).overlaps(part));
    return isNear && !door.overlaps(part);
  }

  private static boolean isBehind(Box door, Box part) {
    Length before = part.at(Face.FRONT).minus(door.at(Face.BACK));
    return !before.isNegative() && !before.isLongerThan(BEFORE);
  }

  /** Whether a part's inner edge lies near a side of the door, at the middle of that side. */
  private static boolean stands(Box door, Box part, Face side) {
    Axis along = side.axis() == Axis.X ? Axis.Z : Axis.X;
    Range across = part.on(side.axis());
    boolean isOutside =
        across.end(side.sign()).minus(door.at(side)).times(side.sign()).isPositive()
            || across.end(side.sign()).equals(door.at(side));
    return isOutside
        && part.on(along).contains(door.on(along).middle())
        && !across.end(-side.sign()).minus(door.at(side)).abs().isLongerThan(NEAR);
  }

  /** How far the door reaches over a part; negative where it falls short of it. */
  private static Length lap(Box door, Part part, Face side) {
    return door.at(side).minus(part.bounds().at(side.opposite())).times(side.sign());
  }

  private Diagnostic finding(Piece piece, Hung door, Part part, Face side) {
    Length lap = lap(door.box(), part, side);
    String how =
        lap.isPositive()
            ? "laps over %s by only %s"
                .formatted(part.name(), piece.description().format().formatWithUnit(lap))
            : lap.isZero()
                ? "just meets the edge of %s and covers none of it".formatted(part.name())
                : "falls short of %s by %s"
                    .formatted(part.name(), piece.description().format().formatWithUnit(lap.abs()));
    return Diagnostic.warning(
            code(),
            door.parts().getFirst().at(),
            "`%s` lies before its opening, but at its %s it %s"
                .formatted(door.unit(), side.word(), how))
        .also(part.at(), part.name() + " is defined here")
        .hint("make the door larger there, or set it into the opening with a gap all round");
  }
}
