package storyrod.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A strap to the wall whose screws find nothing in the piece that holds them. */
final class StrapHold implements Check {
  /** Sheets of 1/2 in and of 12 mm measure a little less. */
  private static final Length THICK_ENOUGH = Length.mm(11);

  @Override
  public String code() {
    return "strap-hold";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The strap to the wall is screwed into solid wood across its fibres, or into the face of"
            + " a sheet of 1/2 in (12 mm) and more: not into the edge of a sheet, not into end"
            + " grain, not into a thin back.",
        "Common practice.",
        "A sheet that stands from front to back takes the strap on its face. The check does not know"
            + " the strap's screws: their length is the strap maker's to say.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.description().hardware().stream()
        .filter(entry -> piece.kind(entry.item().value()) == ItemKind.ANTI_TIP_STRAP)
        .flatMap(entry -> findings(piece, entry))
        .toList();
  }

  private Stream<Diagnostic> findings(Piece piece, HardwareEntry entry) {
    return entry.parts().stream().flatMap(name -> finding(piece, name).stream());
  }

  private Optional<Diagnostic> finding(Piece piece, Located<String> name) {
    Part part = piece.part(name.value());
    return weakness(part)
        .map(
            weak ->
                Diagnostic.warning(
                        code(),
                        name.at(),
                        "the strap's screws go into %s %s".formatted(weak, part.name()))
                    .also(part.at(), part.name() + " is defined here")
                    .hint(
                        "screw the strap to a part of solid wood, or to one whose face looks to the"
                            + " wall"));
  }

  private static Optional<String> weakness(Part part) {
    if (part.stock().kind() != StockKind.SHEET) {
      return part.length() == Axis.Y ? Optional.of("the end grain of") : Optional.empty();
    }
    if (part.thickness() == Axis.Z) {
      return Optional.of("the edge of the sheet");
    }
    return part.finishedThickness().isShorterThan(THICK_ENOUGH)
        ? Optional.of("the thin sheet")
        : Optional.empty();
  }
}
