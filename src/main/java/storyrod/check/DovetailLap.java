package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Half-blind dovetails that leave too little in front of them, or go in too deep. */
final class DovetailLap implements Check {
  @Override
  public String code() {
    return "dovetail-lap";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "In front of half-blind dovetails at least 1/8 in or 3 mm of wood is left, and at least a"
            + " quarter of the thickness; a thinner lap breaks out when the sockets are cut or the"
            + " joint is driven home.",
        "Common practice.",
        "It takes the lap as cut; a front that is shaped later has less.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Dovetails row && row.term().equals(Dovetails.HALF_BLIND)) {
          check(piece, part, row, found);
        }
      }
    }
    return found;
  }

  private void check(Piece piece, Part part, Dovetails row, List<Diagnostic> found) {
    LengthFormat format = piece.description().format();
    Length least = format.unit() == Unit.INCH ? Length.inch(1, 8) : Length.mm(3);
    Length thick = part.box().size(row.wide().axis());
    Length lap = thick.minus(row.length());
    boolean isDeep = lap.times(4).isShorterThan(thick);
    if (lap.isShorterThan(least) || isDeep) {
      String why =
          isDeep
              ? "the sockets take more than three quarters of its " + format.formatWithUnit(thick)
              : "less than " + format.formatWithUnit(least);
      found.add(
          Diagnostic.warning(
                  code(),
                  row.at(),
                  "the half-blind dovetails in %s leave a lap of %s: %s"
                      .formatted(part.name(), format.formatWithUnit(lap), why))
              .also(part.at(), part.name() + " is defined here")
              .hint("a lap of a quarter to a third of the thickness is common practice"));
    }
  }
}
