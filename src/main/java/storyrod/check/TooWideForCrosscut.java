package storyrod.check;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A solid part that the shop cannot crosscut in one go. */
final class TooWideForCrosscut implements Check {
  @Override
  public String code() {
    return "too-wide-for-crosscut";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A solid part is cut to length across its whole width, so it is no wider than `crosscut` of"
            + " the shop.",
        "Follows from the shop's machines; the ways round it are common practice.",
        "Sheets are cut with a track saw or a saw on a guide and are left out; it says nothing"
            + " where the crosscut is not described.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Optional<Length> crosscut = piece.description().shop().machines().crosscut();
    return crosscut.stream()
        .flatMap(
            widest ->
                piece.marks().stream()
                    .map(mark -> mark.shown())
                    .filter(part -> part.stock().kind() == StockKind.SOLID)
                    .filter(part -> piece.keptAs(part.name()).isEmpty())
                    .filter(part -> piece.blankWidth(part).isLongerThan(widest))
                    .map(part -> finding(piece, part, widest)))
        .toList();
  }

  private Diagnostic finding(Piece piece, Part part, Length widest) {
    LengthFormat format = piece.description().format();
    List<String> ways = new Routes(piece).crosscutting();
    Diagnostic finding =
        Diagnostic.advice(
            code(),
            part.at(),
            "%s is %s wide, the shop crosscuts %s"
                .formatted(
                    part.name(),
                    format.formatWithUnit(piece.blankWidth(part)),
                    format.formatWithUnit(widest)));
    return ways.isEmpty()
        ? finding.hint("have it cut to length where a wider saw is")
        : finding.hint("cut it to length " + Routes.oneOf(ways));
  }
}
