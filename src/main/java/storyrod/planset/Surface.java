package storyrod.planset;

import java.util.stream.Collectors;
import storyrod.piece.Piece;
import storyrod.stock.SupplyPlan;

/**
 * What a finish goes on.
 *
 * @param woods the woods of all parts
 * @param area of all their faces on which no other part lies, as printed
 */
record Surface(String woods, String area) {
  static Surface of(Piece piece, SupplyPlan supplies, Texts texts) {
    String woods =
        piece.parts().stream()
            .map(part -> texts.wood(part.stock()))
            .distinct()
            .collect(Collectors.joining(", "));
    return new Surface(woods, Supplies.area(supplies.surfaces().openSquareMetres(), texts));
  }
}
