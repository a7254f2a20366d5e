package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Fingers of a box joint that are out of proportion to their board. */
final class FingerWidth implements Check {
  @Override
  public String code() {
    return "finger-width";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The fingers of a box joint are about as wide as their board is thick, at least half and at"
            + " most twice as wide.",
        "Common practice.",
        "It takes the width that all fingers but the last have, and knows nothing of the load.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Comb comb) {
          check(piece.description().format(), part, comb, found);
        }
      }
    }
    return found;
  }

  private void check(LengthFormat format, Part part, Comb comb, List<Diagnostic> found) {
    Length thick = part.finishedThickness();
    boolean isNarrow = comb.finger().times(2).isShorterThan(thick);
    if (isNarrow || comb.finger().isLongerThan(thick.times(2))) {
      found.add(
          Diagnostic.warning(
                  code(),
                  comb.at(),
                  "the fingers of %s are %s wide in %s: %s"
                      .formatted(
                          part.name(),
                          format.formatWithUnit(comb.finger()),
                          format.formatWithUnit(thick),
                          isNarrow
                              ? "less than half of the thickness, and so they break easily"
                              : "more than twice the thickness, and so little is glued"))
              .also(part.at(), part.name() + " is defined here")
              .hint("about as wide as the board is thick is common practice"));
    }
  }
}
