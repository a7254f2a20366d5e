package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A counterbore so deep that little wood holds the screw's head, or too shallow for a plug. */
final class PlugDepth implements Check {
  @Override
  public String code() {
    return "plug-depth";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Under the head of a screw that a plug covers at least 1/4 in (6 mm) of wood remains, and"
            + " the plug itself is at least 3/16 in (5 mm) deep, so that it stays when it is cut"
            + " flush.",
        "Common practice.",
        "It does not work out what the screw carries.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Cut.Holes holes && holes.term().equals("counterbore")) {
          check(piece.description().format(), part, holes, found);
        }
      }
    }
    return found;
  }

  private void check(LengthFormat format, Part part, Cut.Holes bore, List<Diagnostic> found) {
    boolean isInch = format.unit() == Unit.INCH;
    Length under = isInch ? Length.inch(1, 4) : Length.mm(6);
    Length least = isInch ? Length.inch(3, 16) : Length.mm(5);
    Length left = part.box().size(bore.from().axis()).minus(bore.depth());
    if (left.isShorterThan(under)) {
      found.add(
          fault(
                  part,
                  bore,
                  "leaves only %s of wood under the head".formatted(format.formatWithUnit(left)))
              .hint("leave %s or more".formatted(format.formatWithUnit(under))));
    }
    if (bore.depth().isShorterThan(least)) {
      found.add(
          fault(part, bore, "is only %s deep".formatted(format.formatWithUnit(bore.depth())))
              .hint("give a plug %s or more".formatted(format.formatWithUnit(least))));
    }
  }

  private Diagnostic fault(Part part, Cut.Holes bore, String what) {
    return Diagnostic.warning(
            code(),
            bore.at(),
            "the counterbore for %s in %s %s"
                .formatted(bore.forWhat().orElseThrow(), part.name(), what))
        .also(part.at(), part.name() + " is defined here");
  }
}
