package storyrod.drawing;

import java.util.List;
import storyrod.piece.Piece;
import storyrod.words.Words;

/**
 * A full-size template with its sheets.
 *
 * @param shape the true lines, as they lie on the sheets
 */
public record TemplateSheets(FullSize shape, List<TemplateTile> tiles) {
  public TemplateSheets {
    tiles = List.copyOf(tiles);
  }

  /** All templates of a piece on sheets with room for a drawing each. */
  static List<TemplateSheets> draw(Piece piece, Size page) {
    return FullSize.of(piece).parallelStream()
        .map(shape -> TemplateTiles.of(shape, page, Words.ENGLISH))
        .toList();
  }
}
