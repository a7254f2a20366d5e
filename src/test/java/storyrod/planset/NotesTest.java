package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostic;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;
import storyrod.planset.Notes.Finding;
import storyrod.words.Words;

class NotesTest {
  private static final Piece PIECE =
      Pieces.of(
          """
          parts:
            slat:
              stock: ash
              repeat: {count: 2, along: y, over: 0 to 300, size: 50}
              x: 0 to 500
              y: each.front to each.back
              z: 0 to 20
              grain: x
          """);
  private static final Texts TEXTS = new Texts(PIECE.description().format(), Words.ENGLISH);

  private static Diagnostic sag(String part) {
    return Diagnostic.warning("shelf-sag", Sample.AT, part + " bends").hint("make it thicker");
  }

  /** Slats share a mark: to who builds by the plan it is the same sentence. */
  @Test
  void equalPartsAreToldOnce() {
    List<Diagnostic> found = List.of(sag("slat-1"), sag("slat-2"));
    assertEquals(
        List.of(new Finding("Warning", "The slat (A) bends", List.of("Make it thicker"))),
        Notes.findings(found, new ReaderNames(PIECE, TEXTS), TEXTS));
  }

  @Test
  void whatToWriteIntoTheDescriptionIsLeftToTheMaker() {
    Diagnostic sheet =
        Diagnostic.advice("sheet-in-slot", Sample.AT, "slat-1 goes into a slot")
            .hint("measure the sheet before you cut the first slot")
            .hint("write what it measures to the stock as `measured:`")
            .hint("add the density to the item");
    assertEquals(
        List.of("Measure the sheet before you cut the first slot"),
        Notes.findings(List.of(sheet), new ReaderNames(PIECE, TEXTS), TEXTS).getFirst().hints());
  }
}
