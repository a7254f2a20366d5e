package storyrod.check;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.measure.Rational;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Dovetails that are too steep or too straight. */
final class DovetailSlope implements Check {
  private static final Rational STEEPEST = Rational.of(5, 1);
  private static final Rational STRAIGHTEST = Rational.of(9, 1);

  @Override
  public String code() {
    return "dovetail-slope";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The sides of dovetails slope between 1:5 and 1:9; 1:8 is usual in hardwood, 1:6 in"
            + " softwood.",
        "Common practice.",
        "It looks at the slope alone, not at the wood.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream()
        .flatMap(
            part -> part.cuts().stream().filter(DovetailSlope::isOdd).map(cut -> odd(part, cut)))
        .toList();
  }

  private static boolean isOdd(Cut cut) {
    return cut instanceof Dovetails row
        && row.isTails()
        && (isSteep(row) || row.slope().compareTo(STRAIGHTEST) > 0);
  }

  private static boolean isSteep(Dovetails row) {
    return row.slope().compareTo(STEEPEST) < 0;
  }

  private Diagnostic odd(Part part, Cut cut) {
    Dovetails row = (Dovetails) cut;
    return Diagnostic.warning(
            code(),
            cut.at(),
            "the tails of %s slope 1:%s: %s"
                .formatted(
                    part.name(),
                    row.slopeWord(),
                    isSteep(row)
                        ? "steeper than 1:5, and so their corners break off"
                        : "less than 1:9, and so they hardly hold"))
        .hint(
            "1:8 for hardwood and 1:6 for softwood are common practice; leave `slope` out for it");
  }
}
