package storyrod.planset;

import java.util.List;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * How long the screws of pulls and knobs have to be: what comes with them fits a single front, and
 * a drawer's box often stands behind it (common practice).
 */
record Grip(Piece piece) {
  private static final List<ItemKind> HANDLES = List.of(ItemKind.PULL, ItemKind.KNOB);

  /** How far a screw reaches into a pull or a knob to hold it (common practice, from memory). */
  Length held() {
    boolean inch = piece.description().printed().unit() == Unit.INCH;
    return inch ? Length.inch(3, 8) : Length.mm(10);
  }

  /** How much wood an item's screws go through, each thickness once; none but for handles. */
  List<Length> wood(String item) {
    return piece.description().hardware().stream()
        .filter(entry -> entry.item().value().equals(item))
        .filter(entry -> HANDLES.contains(piece.kind(item)))
        .map(entry -> entry.parts().stream().map(Located::value).map(piece::part).toList())
        .flatMap(parts -> parts.stream().map(part -> wood(part, parts)))
        .distinct()
        .sorted()
        .toList();
  }

  private static Length wood(Part part, List<Part> parts) {
    Axis through = part.thickness();
    return parts.stream()
        .filter(other -> other.thickness() == through && isBehind(other, part, through))
        .map(other -> other.box().size(through))
        .reduce(Length.ZERO, Length::plus);
  }

  private static boolean isBehind(Part other, Part part, Axis through) {
    return List.of(Axis.values()).stream()
        .filter(axis -> axis != through)
        .allMatch(axis -> other.box().on(axis).overlaps(part.box().on(axis)));
  }
}
