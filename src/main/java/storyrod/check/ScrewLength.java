package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A screw that leaves less than 1/8 in of wood before it would come out, or bites too little. */
final class ScrewLength implements Check {
  private static final Length SKIN = Length.inch(1, 8);
  private static final Length BITE = Length.inch(3, 8);

  @Override
  public String code() {
    return "screw-length";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A screw leaves at least 1/8 in of wood in front of its point and reaches at "
            + "least 3/8 in into the second part.",
        "Common practice.",
        "It does not work out what the screw carries.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Cut.Holes holes && holes.term().equals("pilot hole")) {
          check(piece, part, holes, found);
        }
      }
    }
    return found;
  }

  private void check(Piece piece, Part part, Cut.Holes holes, List<Diagnostic> found) {
    LengthFormat format = piece.description().format();
    Length left = part.box().size(holes.from().axis()).minus(holes.depth());
    if (left.isShorterThan(SKIN)) {
      found.add(
          Diagnostic.warning(
                  code(),
                  holes.at(),
                  "the point of %s ends %s under the face of %s"
                      .formatted(
                          holes.forWhat().orElse("the screw"),
                          format.formatWithUnit(left),
                          part.name()))
              .hint("take a shorter screw: at least 1/8 in of wood should remain"));
    }
    if (holes.depth().isShorterThan(BITE)) {
      found.add(
          Diagnostic.warning(
                  code(),
                  holes.at(),
                  "%s reaches only %s into %s"
                      .formatted(
                          holes.forWhat().orElse("the screw"),
                          format.formatWithUnit(holes.depth()),
                          part.name()))
              .hint("take a longer screw: 3/8 in or more holds"));
    }
  }
}
