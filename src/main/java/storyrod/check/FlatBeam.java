package storyrod.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.wood.Beam;
import storyrod.wood.Beam.Strip;
import storyrod.wood.StockWood;

/** A part that lies flat as a beam, with the strip along its front. */
final class FlatBeam {
  private static final int TENTHS = 10;

  private FlatBeam() {}

  /** The beam; empty if nothing tells how stiff the part's wood is. */
  static Optional<Beam> of(Piece piece, Part flat) {
    OptionalDouble modulus = StockWood.modulus(flat.stock());
    return modulus.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Beam(
                modulus.getAsDouble(),
                flat.finishedWidth().toMm(),
                flat.finishedThickness().toMm(),
                edging(piece, flat)));
  }

  /** A strip that is glued along the front or upright under it. */
  private static Strip edging(Piece piece, Part shelf) {
    for (Joint joint : piece.joints()) {
      if (joint.glued() && List.of(joint.first(), joint.second()).contains(shelf.name())) {
        String name = joint.first().equals(shelf.name()) ? joint.second() : joint.first();
        Part strip = piece.part(name);
        OptionalDouble modulus = StockWood.modulus(strip.stock());
        if (runsAlong(strip, shelf) && modulus.isPresent()) {
          return new Strip(
              modulus.getAsDouble(),
              strip.box().size(shelf.width()).toMm(),
              strip.box().size(Axis.Z).toMm());
        }
      }
    }
    return Strip.NONE;
  }

  /**
   * Along nearly the whole shelf, before its front edge and flush with its top or, as stiff, with
   * its underside. What is left at the ends is where a beam bends least.
   */
  private static boolean runsAlong(Part strip, Part shelf) {
    boolean isLong =
        strip.length() == shelf.length()
            && !strip
                .finishedLength()
                .times(TENTHS)
                .isShorterThan(shelf.shoulder().size(shelf.length()).times(TENTHS - 1));
    boolean isFlush =
        Stream.of(Face.TOP, Face.BOTTOM)
            .anyMatch(
                face ->
                    strip
                        .box()
                        .at(face)
                        .minus(shelf.box().at(face))
                        .abs()
                        .isShorterThan(Supports.NEAR));
    return isLong
        && isFlush
        && !strip.box().on(shelf.width()).overlaps(shelf.box().on(shelf.width()));
  }
}
