package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A board or stave whose face is wider than the jointer. */
final class TooWideForJointer implements Check {
  @Override
  public String code() {
    return "too-wide-for-jointer";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A planer makes a board even, not flat: its first face is flattened on the jointer, so a"
            + " board or a stave is no wider than `jointer-width` of the shop.",
        "Follows from the shop's machines; the ways round it are common practice.",
        "It takes the finished width, and says nothing of a part that the plan glues up from"
            + " boards of the maker's choice, nor where the shop's jointer is not described.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Optional<Length> jointer = piece.description().shop().machines().jointerWidth();
    return jointer.stream()
        .flatMap(
            widest ->
                piece.marks().stream()
                    .map(mark -> mark.shown())
                    .filter(part -> part.stock().kind() == StockKind.SOLID)
                    .filter(part -> piece.keptAs(part.name()).isEmpty())
                    .filter(part -> !isOfUnsaidStaves(piece, part))
                    .filter(part -> piece.staveWidth(part).isLongerThan(widest))
                    .map(part -> finding(piece, part, widest)))
        .toList();
  }

  private static boolean isOfUnsaidStaves(Piece piece, Part part) {
    return piece.staves(part).isEmpty() && piece.isPanel(part);
  }

  private Diagnostic finding(Piece piece, Part part, Length widest) {
    LengthFormat format = piece.description().format();
    Length width = piece.staveWidth(part);
    boolean isStave = piece.staves(part).orElse(1) > 1;
    List<String> ways = new ArrayList<>(new Routes(piece).flattening(width));
    ways.add("glued up from narrower boards: `staves: " + staves(piece, part, widest) + "`");
    return Diagnostic.advice(
            code(),
            part.at(),
            "%s of %s is %s wide, the jointer takes %s"
                .formatted(
                    isStave ? "a stave" : "the board",
                    part.name(),
                    format.formatWithUnit(width),
                    format.formatWithUnit(widest)))
        .hint("flatten its first face another way: " + Routes.oneOf(ways));
  }

  private static long staves(Piece piece, Part part, Length widest) {
    return Math.ceilDiv(piece.blankWidth(part).ticks(), widest.ticks());
  }
}
