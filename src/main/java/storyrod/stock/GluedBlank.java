package storyrod.stock;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The blanks of a mark's parts that are glued up before anything is cut in them.
 *
 * @param count how many of these blanks
 * @param staves how many boards lie edge to edge in each, where it is known; 1 if it is one
 * @param layers how many lie face to face
 * @param staveWidth of a board when its edges are jointed, where the number of staves is known
 * @param layerThickness what a planed layer measures at least
 * @param length of the blank in the rough
 * @param width of the blank before it is ripped
 * @param thickness of the finished part
 * @param matched whether its staves are turned by their looks, and not their rings in turn
 */
public record GluedBlank(
    String mark,
    int count,
    Optional<Integer> staves,
    int layers,
    Optional<Length> staveWidth,
    Length layerThickness,
    Length length,
    Length width,
    Length thickness,
    boolean matched) {

  /** One for each mark that is glued up, in the order of the marks. */
  static List<GluedBlank> of(Piece piece) {
    return piece.marks().stream()
        .filter(mark -> piece.isPanel(mark.shown()) && piece.keptAs(mark.shown().name()).isEmpty())
        .map(mark -> of(piece, mark))
        .toList();
  }

  private static GluedBlank of(Piece piece, Mark mark) {
    Part part = mark.shown();
    Optional<Integer> staves = piece.isStaved(part) ? piece.staves(part) : Optional.of(1);
    int layers = piece.layers(part);
    return new GluedBlank(
        mark.mark(),
        mark.count(),
        staves,
        layers,
        staves.map(count -> piece.staveWidth(part)),
        part.finishedThickness().dividedBy(layers, RoundingMode.CEILING),
        part.finishedLength().plus(piece.description().shop().extraLength()),
        piece.gluedWidth(part),
        part.finishedThickness(),
        piece.matchesStaves(part));
  }

  public boolean isStaved() {
    return staves.filter(count -> count == 1).isEmpty();
  }

  public boolean isLaminated() {
    return layers > 1;
  }
}
