package storyrod.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import storyrod.description.Diagnostic;
import storyrod.description.Span;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A board whose width is no whole number of fingers, so that the last one is narrower. */
final class FingerDivision implements Check {
  /** What rounding to ticks leaves over, at most. */
  private static final Length NOTHING = Length.micrometres(50);

  @Override
  public String code() {
    return "finger-division";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A board with a box joint is a whole number of fingers wide, so that no finger is narrower"
            + " than the others; one of less than half is a sliver that breaks.",
        "Common practice.",
        "It does not look at later cuts, such as a groove that runs out through a finger.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    Set<Span> seen = new LinkedHashSet<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Comb comb && seen.add(comb.at()) && isUneven(part, comb)) {
          found.add(uneven(piece.description().format(), part, comb));
        }
      }
    }
    return found;
  }

  private static Length rest(Part part, Comb comb) {
    return new Length(part.box().size(comb.along()).ticks() % comb.finger().ticks());
  }

  private static boolean isUneven(Part part, Comb comb) {
    Length rest = rest(part, comb);
    return rest.isLongerThan(NOTHING) && comb.finger().minus(rest).isLongerThan(NOTHING);
  }

  private Diagnostic uneven(LengthFormat format, Part part, Comb comb) {
    Length rest = rest(part, comb);
    Length wide = part.box().size(comb.along());
    long whole = wide.ticks() / comb.finger().ticks();
    boolean isSliver = rest.times(2).isShorterThan(comb.finger());
    return Diagnostic.warning(
            code(),
            comb.at(),
            "%s is %s wide, which leaves %s for the last of its fingers of %s%s"
                .formatted(
                    part.name(),
                    format.formatWithUnit(wide),
                    format.formatWithUnit(rest),
                    format.formatWithUnit(comb.finger()),
                    isSliver ? ": a sliver that breaks" : ""))
        .also(part.at(), part.name() + " is defined here")
        .hint(
            "make the boards %s or %s wide, or write `fingers: %d`, equal ones"
                .formatted(
                    format.formatWithUnit(comb.finger().times(whole)),
                    format.formatWithUnit(comb.finger().times(whole + 1)),
                    Math.max(3, isSliver ? whole : whole + 1)));
  }
}
