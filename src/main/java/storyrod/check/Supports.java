package storyrod.check;

import java.util.Comparator;
import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What a part that lies flat rests on. */
final class Supports {
  static final Length NEAR = Length.mm(1);

  private Supports() {}

  /** Parts that run across under a flat one between its ends, from its near end to its far one. */
  static List<Part> between(Piece piece, Part flat) {
    Axis along = flat.length();
    Range whole = flat.shoulder().on(along);
    return piece.parts().stream()
        .filter(part -> isUnder(piece, part, flat))
        .filter(part -> isWithin(part.bounds().on(along).middle(), whole))
        .sorted(Comparator.comparing(part -> part.bounds().on(along).middle()))
        .toList();
  }

  private static boolean isWithin(Length at, Range whole) {
    return at.isLongerThan(whole.from()) && at.isShorterThan(whole.to());
  }

  /** A part that runs across the shelf and carries it, or what lies along under it. */
  private static boolean isUnder(Piece piece, Part part, Part shelf) {
    return isAcross(part, shelf)
        && (touches(part, shelf)
            || piece.parts().stream()
                .anyMatch(bearer -> isAlong(bearer, shelf) && touches(part, bearer)));
  }

  private static boolean isAcross(Part part, Part shelf) {
    Box box = part.bounds();
    Axis along = shelf.length();
    Axis across = shelf.width();
    return box.on(across).overlaps(shelf.box().on(across))
        && box.on(along).overlaps(shelf.box().on(along))
        && box.size(across).times(2).isLongerThan(shelf.finishedWidth())
        && box.size(along).isShorterThan(shelf.finishedWidth());
  }

  /** A rail or a stretcher that touches the shelf from below and runs on over its supports. */
  private static boolean isAlong(Part bearer, Part shelf) {
    Axis along = shelf.length();
    return touches(bearer, shelf)
        && bearer.length() == along
        && bearer.bounds().size(along).times(2).isLongerThan(shelf.finishedLength());
  }

  /**
   * Whether rails along it before and behind its middle, as of a plinth, carry it from the floor
   * over all its length.
   */
  static boolean isOnPlinth(Piece piece, Part flat) {
    Length floor =
        piece.parts().stream()
            .map(part -> part.bounds().at(Face.BOTTOM))
            .min(Comparator.naturalOrder())
            .orElse(Length.ZERO);
    Length middle = flat.box().on(flat.width()).middle();
    List<Length> rails =
        piece.parts().stream()
            .filter(bearer -> isAlong(bearer, flat) && runsAllAlong(bearer, flat))
            .filter(bearer -> !bearer.bounds().at(Face.BOTTOM).isLongerThan(floor))
            .map(bearer -> bearer.bounds().on(flat.width()).middle())
            .toList();
    return rails.stream().anyMatch(middle::isLongerThan)
        && rails.stream().anyMatch(middle::isShorterThan);
  }

  /**
   * Whether the part stands out over a rail by a twentieth of its length at most, at either end.
   */
  private static boolean runsAllAlong(Part bearer, Part flat) {
    Range rail = bearer.bounds().on(flat.length());
    Range whole = flat.shoulder().on(flat.length());
    Length over = rail.from().minus(whole.from()).max(whole.to().minus(rail.to()));
    return !over.times(20).isLongerThan(whole.length());
  }

  /** Whether a part ends under another, or in a slot of its underside. */
  static boolean touches(Part under, Part above) {
    Box box = under.bounds();
    Length top = box.at(Face.TOP);
    return top.plus(NEAR).isLongerThan(above.box().at(Face.BOTTOM))
        && top.isShorterThan(above.box().at(Face.TOP))
        && box.on(Axis.X).overlaps(above.box().on(Axis.X))
        && box.on(Axis.Y).overlaps(above.box().on(Axis.Y));
  }
}
