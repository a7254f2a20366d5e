package storyrod.check;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Diagnostic;
import storyrod.description.Span;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Fineness;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Carving;
import storyrod.piece.Cut;
import storyrod.piece.Drilling;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;

/**
 * A pocket whose mouth, the long oval that the bit leaves on the face, runs into an edge that is
 * curved or slanted. Straight edges are the matter of {@link PocketScrewFit}.
 */
final class PocketMouth implements Check {
  private static final int ROUND = 24;

  /** So deep under the face the wood is asked for, clear of the face itself. */
  private static final double UNDER_MM = 0.05;

  /** The least wood beside a pocket hole. */
  static Length clear(LengthFormat format) {
    return format.unit() == Unit.INCH ? Length.inch(1, 8) : Length.mm(3);
  }

  @Override
  public String code() {
    return "pocket-mouth";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The mouth of a pocket hole stays 1/8 in (3 mm) off an edge that is curved or slanted: the"
            + " wood between breaks off, and the opening shows from the edge.",
        "Common practice, from memory.",
        "It asks for the wood at the face; how deep the pocket lies there does not count.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Length clear = clear(piece.description().format());
    return piece.parts().stream().flatMap(part -> findings(piece, part, clear).stream()).toList();
  }

  private List<Diagnostic> findings(Piece piece, Part part, Length clear) {
    List<Cut> shaping = part.cuts().stream().filter(PocketMouth::shapes).toList();
    if (shaping.isEmpty()) {
      return List.of();
    }
    Solid wood = Carving.of(part.box(), shaping, Fineness.USUAL);
    return part.cuts().stream()
        .filter(PocketHoles.class::isInstance)
        .map(PocketHoles.class::cast)
        .filter(pockets -> !isIn(wood, part, pockets, clear.toMm()))
        .map(pockets -> fault(piece, part, pockets, shaping.getFirst().at()))
        .toList();
  }

  private static boolean shapes(Cut cut) {
    return cut instanceof Slanted.Slope || cut instanceof Cut.Shaped;
  }

  private static boolean isIn(Solid wood, Part part, PocketHoles pockets, double clearMm) {
    return Drilling.of(pockets, part.box()).stream()
        .filter(bore -> 2 * bore.radiusMm() > pockets.diameter().toMm() - UNDER_MM)
        .allMatch(wide -> isIn(wood, pockets, wide, clearMm));
  }

  /** The half of the oval that lies away from the end, with some wood around it. */
  private static boolean isIn(Solid wood, PocketHoles pockets, Cylinder wide, double clearMm) {
    Vector3D out = pockets.from().normal();
    Vector3D back = pockets.end().opposite().normal();
    Vector3D across = out.cross(back);
    double angle = StrictMath.toRadians(pockets.angleDegrees());
    double half = wide.radiusMm() / StrictMath.sin(angle) + clearMm;
    double beside = wide.radiusMm() + clearMm;
    Vector3D middle = wide.mouth().subtract(out.multiply(UNDER_MM));
    return IntStream.rangeClosed(0, ROUND)
        .mapToDouble(i -> StrictMath.PI * i / ROUND)
        .mapToObj(
            turn ->
                middle
                    .add(back.multiply(half * StrictMath.sin(turn)))
                    .add(across.multiply(beside * StrictMath.cos(turn))))
        .allMatch(wood::holds);
  }

  private Diagnostic fault(Piece piece, Part part, PocketHoles pockets, Span shape) {
    LengthFormat format = piece.description().format();
    return Diagnostic.warning(
            code(),
            pockets.at(),
            "the mouth of a pocket hole lies less than %s from a shaped edge of %s, or runs over it"
                .formatted(format.formatWithUnit(clear(format)), part.name()))
        .also(part.at(), part.name() + " is defined here")
        .also(shape, "its shape is given here")
        .hint("move it to where the part is wider, make the shape flatter, or take another joint");
  }
}
