package storyrod.build;

import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Piece;

/**
 * Where a part lies beside another one that has no slot for it.
 *
 * @param part the full name of the part that is set
 * @param on the full name of the part that it is set by
 * @param face the end, edge or face of {@code on} that it is set by
 * @param distance zero for parts that are flush or that touch
 */
public record Seat(How how, String part, String on, Face face, Length distance) {
  /** Whether the part is measured off a face of the other that looks towards it. */
  public boolean isOffInnerFace(Piece piece) {
    Length middle = piece.part(part).bounds().on(face.axis()).middle();
    Length way = middle.minus(piece.part(on).bounds().at(face));
    return how == How.AGAINST && way.times(face.sign()).isPositive();
  }

  /** How one part is set by the other. */
  public enum How {
    /** The two lie in one plane there. */
    FLUSH,
    /** The part lies against the other, or a distance off its face. */
    AGAINST,
    /** From the other's end to the part's nearer side. */
    FROM,
    /** From the other's end to the middle of the part, where brads are driven into it. */
    MIDDLE,
    /** The part stands out past the other's end. */
    PAST
  }
}
