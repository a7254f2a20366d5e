package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.KeptBoard;
import storyrod.piece.KeptCutout;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.SawnBlank;

/** Pieces cut out and kept that can be made, and will disappoint. */
final class KeptPieces implements Check {
  @Override
  public String code() {
    return "kept-cutout";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A piece that is cut out and kept has a gap on every side, the same on opposite"
            + " ones; a blank that is ripped apart and glued together again is of solid wood,"
            + " with strips that are no thinner than the board.",
        "Common practice, no source.",
        "It takes the kerf that the shop gives to be that of the blade in use.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (KeptCutout kept : piece.kept()) {
      noGap(kept).ifPresent(found::add);
      Stream.of(kept.length(), kept.width())
          .flatMap(axis -> uneven(piece, kept, axis).stream())
          .forEach(found::add);
    }
    boards(piece).forEach(board -> found.addAll(sawn(board, piece.description().format())));
    return found;
  }

  private static List<KeptBoard> boards(Piece piece) {
    return piece.parts().stream()
        .flatMap(part -> piece.keptBoard(part.name()).stream())
        .filter(KeptBoard::isSawn)
        .toList();
  }

  private Optional<Diagnostic> noGap(KeptCutout kept) {
    return kept.sideGap().isPositive()
        ? Optional.empty()
        : Optional.of(
            Diagnostic.warning(
                    code(),
                    kept.at(),
                    kept.kept()
                        + " fits its opening across the grain without any gap, and will stick when"
                        + " the wood swells")
                .hint("give the gap that is to be trimmed off each side, such as `gap: 1/16 in`"));
  }

  /** A part in its own opening, nearer to one side of it than to the other. */
  private Optional<Diagnostic> uneven(Piece piece, KeptCutout kept, Axis axis) {
    Part part = piece.part(kept.kept());
    Range opening = kept.opening().on(axis);
    Range has = part.box().on(axis);
    Length before = has.from().minus(opening.from());
    Length behind = opening.to().minus(has.to());
    if (!kept.opening().overlaps(part.box()) || before.equals(behind)) {
      return Optional.empty();
    }
    LengthFormat format = piece.description().format();
    Range even = kept.keptBox().on(axis);
    return Optional.of(
        Diagnostic.warning(
                code(),
                part.at(),
                "%s has a gap of %s before it and of %s behind it on %s"
                    .formatted(
                        part.name(),
                        format.formatWithUnit(before),
                        format.formatWithUnit(behind),
                        axis.word()))
            .also(kept.at(), "it is cut out here")
            .hint(
                "in the middle it runs from %s to %s"
                    .formatted(
                        format.formatWithUnit(even.from()), format.formatWithUnit(even.to()))));
  }

  private List<Diagnostic> sawn(KeptBoard board, LengthFormat format) {
    return Stream.of(sheet(board), thinStrip(board, format)).flatMap(Optional::stream).toList();
  }

  private Optional<Diagnostic> sheet(KeptBoard board) {
    return board.board().stock().kind() == StockKind.SOLID
        ? Optional.empty()
        : Optional.of(
            Diagnostic.warning(
                    code(),
                    board.cutouts().getFirst().at(),
                    board.board().name()
                        + " is of sheet stock: ripped apart and glued together again, its thin face"
                        + " layers chip at the saw and show every seam, and its crosswise layers"
                        + " make weak edge joints")
                .hint("cut it out whole: write `method: router` or `method: laser`")
                .hint("or make the board of solid wood"));
  }

  private Optional<Diagnostic> thinStrip(KeptBoard board, LengthFormat format) {
    Length thickness = board.board().finishedThickness();
    return SawnBlank.of(board).strips().stream()
        .map(SawnBlank.Strip::width)
        .filter(width -> width.isShorterThan(thickness))
        .min(Length::compareTo)
        .map(
            width ->
                Diagnostic.warning(
                        code(),
                        board.cutouts().getFirst().at(),
                        "a strip of %s is ripped off %s, which is %s thick: it bends at the saw and"
                                .formatted(
                                    format.formatWithUnit(width),
                                    board.board().name(),
                                    format.formatWithUnit(thickness))
                            + " in the clamps")
                    .hint("move the opening away from the edge, or make it smaller"));
  }
}
