package storyrod.check;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.TrenchRole;

/** A mortise, or a groove for a tongue, with so little wood beside it that it may split off. */
final class MortiseWall implements Check {
  /** The wall beside a socket is that of its mortise; at the end it may be open. */
  private static final List<String> WITHOUT_WALLS = List.of("lid groove", Cut.Trench.HAUNCH_SOCKET);

  @Override
  public String code() {
    return "mortise-wall";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Beside, behind and at the ends of a mortise, and beside a groove for a tongue,"
            + " at least 1/4 in (6 mm) of wood remains.",
        "Common practice.",
        "It takes the wood round the mortise to be sound.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream()
        .flatMap(part -> part.cuts().stream().flatMap(cut -> walls(piece, part, cut)))
        .toList();
  }

  private Stream<Diagnostic> walls(Piece piece, Part part, Cut cut) {
    if (!(cut instanceof Cut.Trench trench)
        || WITHOUT_WALLS.contains(trench.term())
        || !takesInTenon(piece, part, trench)) {
      return Stream.empty();
    }
    boolean isGroove = TrenchRole.GROOVE.isOf(trench);
    return Arrays.stream(Face.values())
        .filter(face -> face != trench.from() && !runsThrough(part, trench, face))
        .filter(face -> !isGroove || face.axis() != trench.from().axis())
        .filter(face -> wall(part, trench, face).isShorterThan(least(piece)))
        .map(face -> thin(piece, part, trench, face));
  }

  private static boolean takesInTenon(Piece piece, Part part, Cut.Trench trench) {
    return piece.parts().stream()
        .filter(other -> trench.isFor(other.name()))
        .flatMap(other -> other.cuts().stream())
        .anyMatch(cut -> cut instanceof Cut.Tenon && cut.isFor(part.name()));
  }

  private static boolean runsThrough(Part part, Cut.Trench trench, Face face) {
    return trench.removed().on(face.axis()).equals(part.box().on(face.axis()));
  }

  private static Length wall(Part part, Cut.Trench trench, Face face) {
    return part.box().at(face).minus(trench.removed().at(face)).abs();
  }

  private static Length least(Piece piece) {
    return piece.description().format().unit() == Unit.INCH ? Length.inch(1, 4) : Length.mm(6);
  }

  private Diagnostic thin(Piece piece, Part part, Cut.Trench trench, Face face) {
    LengthFormat format = piece.description().format();
    Length wall = wall(part, trench, face);
    return Diagnostic.warning(
            code(),
            trench.at(),
            wall.isZero()
                ? "the %s in %s is open at the %s"
                    .formatted(trench.term(), part.name(), face.word())
                : "only %s of wood is left between the %s in %s and its %s"
                    .formatted(
                        format.formatWithUnit(wall), trench.term(), part.name(), face.word()))
        .also(part.at(), part.name() + " is defined here")
        .hint(
            "leave at least %s (common practice): move it, or make it smaller"
                .formatted(format.formatWithUnit(least(piece))));
  }
}
