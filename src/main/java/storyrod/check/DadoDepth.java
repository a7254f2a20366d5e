package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A dado, groove or rabbet that leaves too little wood behind it, or holds too little. */
final class DadoDepth implements Check {
  private static final List<String> SLOTS =
      List.of("dado", "stopped dado", "groove", "stopped groove", "lid groove", "rabbet");

  @Override
  public String code() {
    return "dado-depth";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A dado, groove or rabbet is about a third to a half of the thickness deep. "
            + "More than half weakens the part, less than a fifth hardly holds.",
        "Common practice.",
        "Slots in an edge are left to the check of what stays beside a mortise.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Cut.Trench trench && SLOTS.contains(trench.term())) {
          check(piece, part, trench, found);
        }
      }
    }
    return found;
  }

  private void check(Piece piece, Part part, Cut.Trench trench, List<Diagnostic> found) {
    if (trench.from().axis() != part.thickness()) {
      return;
    }
    Length thickness = part.finishedThickness();
    LengthFormat format = piece.description().format();
    boolean tooDeep = trench.depth().times(2).isLongerThan(thickness);
    boolean tooShallow = trench.depth().times(5).isShorterThan(thickness);
    if (tooDeep || tooShallow) {
      found.add(
          Diagnostic.warning(
                  code(),
                  trench.at(),
                  "the %s in %s is %s deep in %s: %s"
                      .formatted(
                          trench.term(),
                          part.name(),
                          format.formatWithUnit(trench.depth()),
                          format.formatWithUnit(thickness),
                          tooDeep ? "more than half, which weakens it" : "it will hardly hold"))
              .also(part.at(), part.name() + " is defined here")
              .hint("a third to a half of the thickness is common practice"));
    }
  }
}
