package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.piece.Cut;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;
import storyrod.words.Words;

class CutTermsTest {
  private static final CutTerms TERMS = new CutTerms(Words.ENGLISH);

  /** A haunched tenon in its mortise; the haunch lies in a socket of its own. */
  private static final Piece FRAME =
      Pieces.of(
          """
          parts:
            leg: {stock: ash, x: 0 to 40, y: 0 to 20, z: 0 to 400, grain: z}
            rail: {stock: ash, x: leg.right to 350, y: 0 to 20, z: 300 to 390, grain: x}
          joints:
            - tenon: {end: rail.left, into: leg, depth: 25, thickness: 7, haunch: top, glue: yes}
          """);

  @Test
  void aTermStandsInTheSingularOrThePlural() {
    List<Cut.Trench> cuts = FRAME.part("leg").cuts(Cut.Trench.class);
    assertEquals(
        List.of("mortise", "mortises", "haunch socket", "haunch sockets"),
        cuts.stream().flatMap(cut -> Stream.of(TERMS.of(cut, 1), TERMS.of(cut, 2))).toList());
  }

  @Test
  void aTenonIsCalledHaunchedWhereItIs() {
    Cut.Tenon tenon = FRAME.part("rail").cuts(Cut.Tenon.class).getFirst();
    assertEquals("haunched tenon", TERMS.tenon(tenon, 1));
    Cut.Tenon plain =
        new Cut.Tenon(
            tenon.term(), tenon.from(), tenon.end(), tenon.tenon(), tenon.forWhat(), tenon.at());
    assertEquals("tenon", TERMS.tenon(plain, 1));
  }
}
