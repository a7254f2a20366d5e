package storyrod.drawing;

import java.util.List;
import storyrod.piece.Piece;

/**
 * Full-size templates that share sheets, with these.
 *
 * @param shapes the true lines, as they lie on the sheets
 */
public record TemplateSheets(List<FullSize> shapes, List<TemplateTile> tiles) {
  public TemplateSheets {
    shapes = List.copyOf(shapes);
    tiles = List.copyOf(tiles);
  }

  /** All templates of a piece on sheets with room for a drawing each. */
  static List<TemplateSheets> draw(Piece piece, Size page) {
    return TemplateBoard.pack(FullSize.of(piece), TemplateTiles.window(page)).parallelStream()
        .map(board -> TemplateTiles.of(board, page, piece.description().words()))
        .toList();
  }
}
