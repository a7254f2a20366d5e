package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Haunch;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A haunch that leaves too little of its tenon, or of the wood that it is there to save. */
final class HaunchSize implements Check {
  @Override
  public String code() {
    return "haunch-size";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A haunch takes about a third of the width of the whole tenon, never more than half, and is"
            + " about as deep as the tenon is thick, at most half as deep as the tenon is long: it"
            + " only keeps the rail from twisting, while the tenon holds and the wood behind the"
            + " haunch keeps the mortise closed.",
        "Common practice (from memory).",
        "It does not work out what the joint carries.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut.Tenon tenon : part.cuts(Cut.Tenon.class)) {
        tenon.haunch().ifPresent(haunch -> check(piece, part, tenon, haunch, found));
      }
    }
    return found;
  }

  private void check(
      Piece piece, Part part, Cut.Tenon tenon, Haunch haunch, List<Diagnostic> found) {
    LengthFormat format = piece.description().format();
    Axis width = haunch.side().axis();
    Length left = tenon.tenon().size(width);
    if (haunch.width().isLongerThan(left)) {
      found.add(
          Diagnostic.warning(
                  code(),
                  tenon.at(),
                  "the haunch of %s is %s wide and leaves a tenon of only %s"
                      .formatted(
                          part.name(),
                          format.formatWithUnit(haunch.width()),
                          format.formatWithUnit(left)))
              .also(part.at(), part.name() + " is defined here")
              .hint("leave `haunch-width` out for a third of both together (common practice)"));
    }
    Length deep = haunch.box().size(tenon.from().axis());
    if (deep.times(2).isLongerThan(tenon.length())) {
      found.add(
          Diagnostic.warning(
                  code(),
                  tenon.at(),
                  "the haunch of %s goes %s into %s, more than half as deep as its tenon, %s"
                      .formatted(
                          part.name(),
                          format.formatWithUnit(deep),
                          tenon.forWhat().orElseThrow(),
                          format.formatWithUnit(tenon.length())))
              .also(part.at(), part.name() + " is defined here")
              .hint("as deep as the tenon is thick, or as a groove there, is common practice"));
    }
  }
}
