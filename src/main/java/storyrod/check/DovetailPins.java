package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Pins between dovetails, or half pins beside them, that are too thin to hold. */
final class DovetailPins implements Check {
  @Override
  public String code() {
    return "dovetail-pins";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Pins are at least 1/8 in or 3 mm wide at their thin side. Half pins at the edges are at"
            + " least half as wide there as their board is thick, or 1/4 in (6 mm) where that is"
            + " less: they split first when the joint is driven home.",
        "Common practice.",
        "Fine work has had thinner pins; the check cannot see the hand that cuts them.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Dovetails row && !row.isTails()) {
          inside(piece, part, row).ifPresent(found::add);
          outside(piece, part, row).ifPresent(found::add);
        }
      }
    }
    return found;
  }

  private Optional<Diagnostic> inside(Piece piece, Part part, Dovetails row) {
    List<Length> pins = row.pins();
    Length least = isInch(piece) ? Length.inch(1, 8) : Length.mm(3);
    return pins.subList(1, pins.size() - 1).stream()
        .filter(pin -> pin.isShorterThan(least))
        .findFirst()
        .map(pin -> thin(piece, part, row, new Thin("pins", pin, least, "a wider `pin`")));
  }

  private Optional<Diagnostic> outside(Piece piece, Part part, Dovetails row) {
    Length quarter = isInch(piece) ? Length.inch(1, 4) : Length.mm(6);
    Length half = part.finishedThickness().dividedBy(2, java.math.RoundingMode.FLOOR);
    Length least = half.min(quarter);
    Length pin = row.pins().getFirst().min(row.pins().getLast());
    return pin.isShorterThan(least)
        ? Optional.of(
            thin(piece, part, row, new Thin("half pins", pin, least, "a wider `half-pin`")))
        : Optional.empty();
  }

  private static boolean isInch(Piece piece) {
    return piece.description().format().unit() == Unit.INCH;
  }

  /** Pins that are too thin, and what to take in place of them. */
  private record Thin(String what, Length have, Length least, String take) {}

  private Diagnostic thin(Piece piece, Part part, Dovetails row, Thin thin) {
    LengthFormat format = piece.description().format();
    return Diagnostic.warning(
            code(),
            row.at(),
            "the %s of %s are %s wide at their thin side, less than %s"
                .formatted(
                    thin.what,
                    part.name(),
                    format.formatWithUnit(thin.have),
                    format.formatWithUnit(thin.least)))
        .also(part.at(), part.name() + " is defined here")
        .hint("give " + thin.take + ", so that they do not split");
  }
}
