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

/** A loose tenon too thick, thin or short, or whose mortises come too near to an edge. */
final class LooseTenonSize implements Check {
  @Override
  public String code() {
    return "loose-tenon-size";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A loose tenon is about a third as thick as the part in whose middle it lies, at least a"
            + " quarter and at most a half. Its mortise in each part is at least half as deep as"
            + " the part is there, or 1 in (25 mm), and 1/4 in (6 mm) of wood remains behind each"
            + " mortise and between it and the edge of the joint.",
        "Common practice.",
        "It does not work out what the joint carries.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    LengthFormat format = piece.description().format();
    return Inserts.in(piece, ItemKind.LOOSE_TENON)
        .flatMap(row -> new Judged(format, row).findings().stream())
        .toList();
  }

  private record Judged(LengthFormat format, Inserts row) {
    List<Diagnostic> findings() {
      List<Diagnostic> found = new ArrayList<>();
      addThickness(found);
      row.parts().forEach(part -> addDepth(part, found));
      Length half = row.slotLength().dividedBy(2, RoundingMode.CEILING);
      Length before = row.fromEnd().minus(half);
      if (before.isShorterThan(wall())) {
        found.add(
            fault(
                    "has a mortise that ends %s before the edge of %s"
                        .formatted(print(before), row.first().name()))
                .hint("leave %s or more: take narrower ones, or fewer".formatted(print(wall()))));
      }
      return found;
    }

    private boolean isInch() {
      return format.unit() == Unit.INCH;
    }

    private Length wall() {
      return isInch() ? Length.inch(1, 4) : Length.mm(6);
    }

    private void addThickness(List<Diagnostic> found) {
      Length thick = row.item().sizes().thickness().orElseThrow();
      if (thick.times(4).isShorterThan(row.thickness())
          || thick.times(2).isLongerThan(row.thickness())) {
        found.add(
            fault(
                    "is %s thick where %s is %s: a quarter to a half of that is right"
                        .formatted(print(thick), row.first().name(), print(row.thickness())))
                .hint("about a third of the thickness is common practice"));
      }
    }

    private void addDepth(Part part, List<Diagnostic> found) {
      Length there = part.box().size(row.joint().entry().axis());
      Length enough = isInch() ? Length.inches(1) : Length.mm(25);
      Length least = enough.min(there.dividedBy(2, RoundingMode.FLOOR));
      if (row.depth(part).isShorterThan(least)) {
        found.add(
            fault("has a mortise only %s deep in %s".formatted(print(row.depth(part)), part.name()))
                .hint(
                    "make it %s or more: take longer ones, or another `depth-into`"
                        .formatted(print(least))));
      }
      if (row.behind(part).isShorterThan(wall())) {
        found.add(
            fault(
                    "leaves only %s of wood behind its mortise in %s"
                        .formatted(print(row.behind(part)), part.name()))
                .hint("leave %s or more".formatted(print(wall()))));
      }
    }

    private String print(Length length) {
      return format.formatWithUnit(length);
    }

    private Diagnostic fault(String what) {
      return Diagnostic.warning(
              "loose-tenon-size",
              row.joint().at(),
              "a loose tenon of %s and %s %s"
                  .formatted(row.first().name(), row.second().name(), what))
          .also(row.first().at(), row.first().name() + " is defined here");
    }
  }
}
