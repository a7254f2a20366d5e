package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Tells which broad face of a part is seen when the piece stands in its place, so that its better
 * side can be turned there. Of two that are seen it is the one that looks to the front, up, or away
 * from the middle; and rather into bays than to the wall or the floor, also into those that a door
 * or a drawer closes: the inside is what one sees when it opens (common practice).
 */
public final class ShowFaces {
  /** What stands before more of a face than this hides it: the rails of an open case do not. */
  private static final double HIDDEN = 0.25;

  /** A face that is seen no better than this is not seen at all. */
  private static final double COVERED = 0.75;

  /** This share of a face has to be in sight through open bays. */
  private static final double IN_SIGHT = 0.25;

  private final Piece piece;
  private final Set<String> movable;

  public ShowFaces(Piece piece) {
    this.piece = piece;
    this.movable = new Trials(piece).movable();
  }

  /** The face that is seen; none if other parts stand before both, or both look into bays. */
  public Optional<Face> of(Part part) {
    Face first = first(part);
    if (part.thickness() != Axis.X && isInSight(part, first)) {
      return Optional.of(first);
    }
    return open(part).or(() -> inside(part).filter(face -> !looksBothWays(part)));
  }

  /** Whether one sees both faces of it in the open bays of the piece, as those of a partition. */
  public boolean looksBothWays(Part part) {
    return faces(part).allMatch(face -> isInSight(part, face));
  }

  /** One that is open before one that is partly covered; of two alike the first. */
  private Optional<Face> open(Part part) {
    return Stream.of(HIDDEN, COVERED)
        .flatMap(most -> faces(part).filter(face -> hidden(part, face) < most))
        .findFirst();
  }

  private Optional<Face> inside(Part part) {
    return faces(part).filter(face -> isInSight(part, face)).findFirst();
  }

  private Stream<Face> faces(Part part) {
    return Stream.of(first(part), first(part).opposite());
  }

  private Face first(Part part) {
    return switch (part.thickness()) {
      case Y -> Face.FRONT;
      case Z -> Face.TOP;
      case X -> isLeftOfMiddle(part) ? Face.LEFT : Face.RIGHT;
    };
  }

  private boolean isLeftOfMiddle(Part part) {
    List<Range> all = piece.parts().stream().map(each -> each.bounds().on(Axis.X)).toList();
    Length from = all.stream().map(Range::from).reduce(Length::min).orElseThrow();
    Length to = all.stream().map(Range::to).reduce(Length::max).orElseThrow();
    Range own = part.bounds().on(Axis.X);
    return own.from().plus(own.to()).isShorterThan(from.plus(to));
  }

  /** The side of a case has an outside that is seen better. */
  private boolean isInSight(Part part, Face face) {
    return new InSight(before(part)).share(part, face) >= IN_SIGHT;
  }

  /** What can stand before a part: doors and drawers open for all that is not a part of them. */
  private List<Part> before(Part part) {
    return movable.contains(part.name())
        ? piece.parts()
        : piece.parts().stream().filter(each -> !movable.contains(each.name())).toList();
  }

  /** The share of a face before which other parts stand. */
  private double hidden(Part part, Face face) {
    return 1 - new InSight(piece.parts()).open(part, face);
  }
}
