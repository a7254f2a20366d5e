package storyrod.check;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.ItemKind;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Biscuits in wood too thin for them, or with slots too near to an end or to the far face. */
final class BiscuitSize implements Check {
  @Override
  public String code() {
    return "biscuit-size";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Wood in whose middle a biscuit lies is at least 1/2 in (12 mm) thick; its slot ends at"
            + " least 1/4 in (6 mm) before the end of the joint and leaves at least 1/8 in (3 mm)"
            + " of wood behind it.",
        "Common practice.",
        "It takes biscuits to line parts up and to strengthen a glued joint, not to carry it"
            + " alone.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return Inserts.in(piece, ItemKind.BISCUIT)
        .flatMap(row -> findings(piece.description().format(), row).stream())
        .toList();
  }

  private List<Diagnostic> findings(LengthFormat format, Inserts row) {
    boolean isInch = format.unit() == Unit.INCH;
    List<Diagnostic> found = new ArrayList<>();
    Length thin = isInch ? Length.inch(1, 2) : Length.mm(12);
    if (row.thickness().isShorterThan(thin)) {
      found.add(
          fault(row, "lies in wood only %s thick".formatted(format.formatWithUnit(row.thickness())))
              .hint("take wood of %s or more".formatted(format.formatWithUnit(thin))));
    }
    Length end = isInch ? Length.inch(1, 4) : Length.mm(6);
    Length before = row.fromEnd().minus(row.slotLength().dividedBy(2, RoundingMode.CEILING));
    if (before.isShorterThan(end)) {
      found.add(
          fault(
                  row,
                  "has a slot that ends %s before the end of %s"
                      .formatted(format.formatWithUnit(before), row.first().name()))
              .hint(
                  "leave %s or more: take a smaller size, or fewer"
                      .formatted(format.formatWithUnit(end))));
    }
    Length skin = isInch ? Length.inch(1, 8) : Length.mm(3);
    for (Part part : row.parts()) {
      if (row.behind(part).isShorterThan(skin)) {
        found.add(
            fault(
                    row,
                    "leaves only %s of wood behind its slot in %s"
                        .formatted(format.formatWithUnit(row.behind(part)), part.name()))
                .hint(
                    "leave %s or more: take a smaller size"
                        .formatted(format.formatWithUnit(skin))));
      }
    }
    return found;
  }

  private Diagnostic fault(Inserts row, String what) {
    return Diagnostic.warning(
            code(),
            row.joint().at(),
            "%s between %s and %s %s"
                .formatted(row.item().name(), row.first().name(), row.second().name(), what))
        .also(row.first().at(), row.first().name() + " is defined here");
  }
}
