package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A tenon or a tongue that is too thin to hold or leaves its mortise or groove too little wood. */
final class TenonThickness implements Check {
  @Override
  public String code() {
    return "tenon-thickness";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A tenon or a tongue is about a third as thick as its part, at least a quarter "
            + "and at most a half.",
        "Common practice.",
        "It measures against the part that has the tenon, not against the one with the "
            + "mortise.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      part.cuts(Cut.Tenon.class).forEach(tenon -> check(piece, part, tenon, found));
    }
    return found;
  }

  private void check(Piece piece, Part part, Cut.Tenon tenon, List<Diagnostic> found) {
    Length have = part.finishedThickness();
    Length thick = tenon.tenon().size(part.thickness());
    boolean isThin = thick.times(4).isShorterThan(have);
    if (isThin || thick.times(2).isLongerThan(have)) {
      LengthFormat format = piece.description().format();
      found.add(
          Diagnostic.warning(
                  code(),
                  tenon.at(),
                  "the %s of %s is %s thick in %s: %s"
                      .formatted(
                          tenon.term(),
                          part.name(),
                          format.formatWithUnit(thick),
                          format.formatWithUnit(have),
                          isThin
                              ? "less than a quarter, and so it is weak"
                              : "more than half, and so it has hardly a shoulder"))
              .also(part.at(), part.name() + " is defined here")
              .hint("about a third of the thickness is common practice"));
    }
  }
}
