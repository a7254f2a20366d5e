package storyrod.check;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.ItemKind;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Dowels too thick or too thin for their part, too shallow, too near to an edge, or alone. */
final class DowelSize implements Check {
  /** Metric dowels go with stock in inches, and the other way round. */
  private static final Length ROUNDING = Length.mm(1);

  @Override
  public String code() {
    return "dowel-size";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A dowel is a third to a half as thick as the part in whose middle it lies, goes at least"
            + " one and a half times its diameter into each part, and stands at least its diameter"
            + " from the edge and twice that from the next, from middle to middle. A single one"
            + " lets the part turn.",
        "Common practice.",
        "It does not work out what the joint carries.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    LengthFormat format = piece.description().format();
    return Inserts.in(piece, ItemKind.DOWEL)
        .flatMap(row -> new Judged(format, row).findings().stream())
        .toList();
  }

  private record Judged(LengthFormat format, Inserts row) {
    List<Diagnostic> findings() {
      List<Diagnostic> found = new ArrayList<>();
      addThickness(found);
      row.parts().forEach(part -> addDepth(part, found));
      addPlaces(found);
      return found;
    }

    private Length diameter() {
      return row.item().diameter().orElseThrow();
    }

    private void addThickness(List<Diagnostic> found) {
      boolean isThin = diameter().times(3).plus(ROUNDING).isShorterThan(row.thickness());
      if (isThin || diameter().times(2).isLongerThan(row.thickness().plus(ROUNDING))) {
        Length half = row.thickness().dividedBy(2, RoundingMode.FLOOR);
        found.add(
            fault(
                    "is %s thick where %s is %s: a third to a half of that is right"
                        .formatted(print(diameter()), row.first().name(), print(row.thickness())))
                .hint("take dowels of %s or a little less".formatted(print(half))));
      }
    }

    private void addDepth(Part part, List<Diagnostic> found) {
      if (row.depth(part).times(2).isShorterThan(diameter().times(3))) {
        found.add(
            fault("goes only %s into %s".formatted(print(row.depth(part)), part.name()))
                .hint(
                    "one and a half times its diameter or more holds: take longer or thinner ones,"
                        + " or another `depth-into`"));
      }
    }

    private void addPlaces(List<Diagnostic> found) {
      if (row.fromEnd().isShorterThan(diameter())) {
        found.add(
            fault(
                    "has its middle only %s from the edge of %s"
                        .formatted(print(row.fromEnd()), row.first().name()))
                .hint("leave its own diameter or more: take fewer, or a closer spacing"));
      }
      if (row.step().filter(each -> each.isShorterThan(diameter().times(2))).isPresent()) {
        found.add(
            fault(
                    "stands only %s from the next, from middle to middle"
                        .formatted(print(row.step().orElseThrow())))
                .hint("leave twice its diameter or more: take fewer"));
      }
      if (row.centres().size() == 1) {
        found.add(
            fault("is the only one, and %s can turn round it".formatted(row.first().name()))
                .hint("take two or more"));
      }
    }

    private String print(Length length) {
      return format.formatWithUnit(length);
    }

    private Diagnostic fault(String what) {
      return Diagnostic.warning(
              "dowel-size",
              row.joint().at(),
              "a dowel of %s and %s %s".formatted(row.first().name(), row.second().name(), what))
          .also(row.first().at(), row.first().name() + " is defined here");
    }
  }
}
