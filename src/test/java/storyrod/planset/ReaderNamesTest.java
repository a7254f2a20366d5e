package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;
import storyrod.words.Words;

class ReaderNamesTest {
  private static final Piece PIECE =
      Pieces.of(
          """
          parts:
            top: {stock: ash, x: 0 to 500, y: 0 to 300, z: 400 to 420, grain: x}
            end-board: {title: Breadboard end, stock: ash, x: 500 to 560, y: 0 to 300, z: 400 to 420, grain: y}
          """);
  private static final ReaderNames NAMES =
      new ReaderNames(PIECE, new Texts(PIECE.description().format(), Words.ENGLISH));

  @Test
  void partsGoByTitleAndMark() {
    assertEquals("the top (A) is 300 mm wide", NAMES.in("top is 300 mm wide"));
    assertEquals("it lies beside the breadboard end (B)", NAMES.in("it lies beside end-board"));
  }

  @Test
  void aStockAtTheHeadGoesByItsWoodAndThickness() {
    assertEquals("White ash 20 goes into slots", NAMES.in("ash goes into slots"));
    assertEquals("sand the ash", NAMES.in("sand the ash"));
  }

  @Test
  void commonWordsAndKeysStayAsTheyAre() {
    assertEquals("sand the top", NAMES.in("sand the top"));
    assertEquals("write `end-board: ...`", NAMES.in("write `end-board: ...`"));
    assertEquals("not end-boards", NAMES.in("not end-boards"));
  }
}
