package storyrod.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** An open mortise of a bridle that is too narrow for a sound tongue, or leaves thin cheeks. */
final class BridleThickness implements Check {
  @Override
  public String code() {
    return "bridle-thickness";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The open mortise of a bridle is about a third as wide as its part is thick, at"
            + " least a quarter and at most a half.",
        "Common practice.",
        "It measures against the part that has the open mortise.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Cut.Trench open && open.term().equals("open mortise")) {
          check(piece.description().format(), part, open, found);
        }
      }
    }
    return found;
  }

  private void check(LengthFormat format, Part part, Cut.Trench open, List<Diagnostic> found) {
    Axis across = across(part, open);
    Length have = part.box().size(across);
    Length wide = open.removed().size(across);
    boolean isNarrow = wide.times(4).isShorterThan(have);
    if (isNarrow || wide.times(2).isLongerThan(have)) {
      found.add(
          Diagnostic.warning(
                  code(),
                  open.at(),
                  "the open mortise in %s is %s wide in %s: %s"
                      .formatted(
                          part.name(),
                          format.formatWithUnit(wide),
                          format.formatWithUnit(have),
                          isNarrow
                              ? "less than a quarter, and so its tongue is weak"
                              : "more than half, and so its cheeks are weak"))
              .also(part.at(), part.name() + " is defined here")
              .hint("about a third of the thickness is common practice"));
    }
  }

  /** The axis on which wood is left beside it. */
  private static Axis across(Part part, Cut.Trench open) {
    return Arrays.stream(Axis.values())
        .filter(axis -> axis != open.from().axis())
        .filter(axis -> !open.removed().on(axis).equals(part.box().on(axis)))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: an open mortise without cheeks"));
  }
}
