package storyrod.check;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A solid part wider than the planer, which has to be flattened another way. */
final class TooWideForPlaner implements Check {
  @Override
  public String code() {
    return "too-wide-for-planer";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A solid part wider than the shop's planer cannot be run through it after a glue-up. The"
            + " hint names what remains by what the shop has.",
        "Follows from the shop's machines; the ways round it are common practice.",
        "It reads the planer's width from the description, or takes 13 in.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Length planer = piece.description().shop().planerWidth();
    return piece.marks().stream()
        .map(mark -> mark.shown())
        .filter(part -> part.stock().kind() == StockKind.SOLID)
        .filter(part -> piece.keptAs(part.name()).isEmpty())
        .filter(part -> part.finishedWidth().isLongerThan(planer))
        .map(part -> finding(piece, part, planer))
        .toList();
  }

  private Diagnostic finding(Piece piece, Part part, Length planer) {
    LengthFormat format = piece.description().format();
    Routes routes = new Routes(piece);
    return Diagnostic.advice(
            code(),
            part.at(),
            "%s is %s wide, the planer takes %s"
                .formatted(
                    part.name(),
                    format.formatWithUnit(part.finishedWidth()),
                    format.formatWithUnit(planer)))
        .hint(
            "plane the staves a little over thickness before the glue-up and level the seams "
                + Routes.oneOf(routes.levelling(part.finishedWidth())));
  }
}
