package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import storyrod.words.Words;

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

  /**
   * Templates of a piece, each on a sheet of its own or on several; turned ones if these are fewer.
   */
  static List<TemplateSheets> draw(List<FullSize> shapes, Words words, Rooms rooms) {
    return draw(shapes, words, rooms.fullSize(shapes), rooms.turnedFullSize(shapes));
  }

  /** The same on sheets with these rooms for a drawing. */
  static List<TemplateSheets> draw(List<FullSize> shapes, Words words, Size upright, Size turned) {
    return packed(shapes, upright)
        .flatMap(pack -> pack.orFewer(turned).stream())
        .parallel()
        .map(pack -> TemplateTiles.of(pack.board, pack.page, words))
        .toList();
  }

  /** Templates laid over sheets of one size. */
  private record Pack(TemplateBoard board, Size page) {
    /** The same templates on other sheets, if these are fewer. */
    private List<Pack> orFewer(Size other) {
      List<Pack> packs = packed(board.shapes(), other).toList();
      int sheets = packs.stream().mapToInt(each -> each.board.sheets()).sum();
      return sheets < board.sheets() ? packs : List.of(this);
    }
  }

  private static Stream<Pack> packed(List<FullSize> shapes, Size page) {
    return TemplateBoard.pack(shapes, TemplateTiles.window(page)).stream()
        .map(board -> new Pack(board, page));
  }
}
