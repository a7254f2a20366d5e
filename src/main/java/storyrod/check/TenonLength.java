package storyrod.check;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A tenon or a tongue that is too short to hold. */
final class TenonLength implements Check {
  @Override
  public String code() {
    return "tenon-length";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A tenon is at least half as long as what it goes into is thick there, or 1 in "
            + "(25 mm); a tongue is at least 1/4 in (6 mm) long, that of a sliding"
            + " lid 1/8 in (3 mm).",
        "Common practice.",
        "It does not work out what the joint carries.");
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
    Part into = piece.part(tenon.forWhat().orElseThrow());
    LengthFormat format = piece.description().format();
    Length least = least(tenon, into, format.unit() == Unit.INCH);
    if (tenon.length().isShorterThan(least)) {
      found.add(
          Diagnostic.warning(
                  code(),
                  tenon.at(),
                  "the %s of %s goes only %s into %s, which is %s thick there"
                      .formatted(
                          tenon.term(),
                          part.name(),
                          format.formatWithUnit(tenon.length()),
                          into.name(),
                          format.formatWithUnit(thereOf(tenon, into))))
              .also(into.at(), into.name() + " is defined here")
              .hint(
                  "make it at least %s long (common practice)%s"
                      .formatted(format.formatWithUnit(least), room(tenon, into))));
    }
  }

  /** Where another mortise comes from the side, a longer tenon alone would run into it. */
  private static String room(Cut.Tenon tenon, Part into) {
    boolean meetsAnother =
        into.cuts(Cut.Trench.class).stream()
            .anyMatch(
                cut ->
                    cut.term().equals("mortise")
                        && cut.from().axis() != tenon.from().axis()
                        && cut.removed().on(into.length()).overlaps(at(tenon, into)));
    return meetsAnother
        ? "; another mortise comes from the side there, so take thicker wood for %s or set the two"
                .formatted(into.name())
            + " further out"
        : "";
  }

  private static Range at(Cut.Tenon tenon, Part into) {
    return into.cuts(Cut.Trench.class).stream()
        .filter(cut -> cut.at().equals(tenon.at()) && cut.from().axis() == tenon.from().axis())
        .map(cut -> cut.removed().on(into.length()))
        .findFirst()
        .orElseGet(() -> into.shoulder().on(into.length()));
  }

  private static Length least(Cut.Tenon tenon, Part into, boolean isInch) {
    if (tenon.term().equals("lid tongue")) {
      return isInch ? Length.inch(1, 8) : Length.mm(3);
    }
    if (tenon.term().equals("tongue")) {
      return isInch ? Length.inch(1, 4) : Length.mm(6);
    }
    Length enough = isInch ? Length.inches(1) : Length.mm(25);
    return enough.min(thereOf(tenon, into).dividedBy(2, RoundingMode.FLOOR));
  }

  private static Length thereOf(Cut.Tenon tenon, Part into) {
    return into.shoulder().size(tenon.from().axis());
  }
}
