package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.SplineSlot;

/** Splines that are too thin or too thick for their part. */
final class SplineThickness implements Check {
  @Override
  public String code() {
    return "spline-thickness";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A spline is a quarter to a third as thick as the parts that it joins.",
        "Common practice.",
        "It measures the slot, whatever the spline is made of.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    LengthFormat format = piece.description().format();
    List<Diagnostic> found = new ArrayList<>();
    for (Joint joint : piece.joints()) {
      Part first = piece.part(joint.first());
      for (Cut cut : first.cuts()) {
        if (cut instanceof SplineSlot slot && cut.at().equals(joint.at())) {
          check(format, thinner(first, piece.part(joint.second())), slot, found);
        }
      }
    }
    return found;
  }

  private static Part thinner(Part one, Part other) {
    return other.finishedThickness().isShorterThan(one.finishedThickness()) ? other : one;
  }

  private void check(LengthFormat format, Part part, SplineSlot slot, List<Diagnostic> found) {
    Length have = part.finishedThickness();
    boolean isThin = slot.thickness().times(4).isShorterThan(have);
    if (isThin || slot.thickness().times(3).isLongerThan(have)) {
      found.add(
          Diagnostic.warning(
                  code(),
                  slot.at(),
                  "the spline is %s thick in %s, which is %s: %s"
                      .formatted(
                          format.formatWithUnit(slot.thickness()),
                          part.name(),
                          format.formatWithUnit(have),
                          isThin ? "less than a quarter" : "more than a third"))
              .also(part.at(), part.name() + " is defined here")
              .hint("a quarter to a third of the thickness is common practice"));
    }
  }
}
