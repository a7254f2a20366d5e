package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.measure.Length;
import storyrod.piece.SawnBlank.Block;
import storyrod.piece.SawnBlank.SawCut;

/**
 * Pieces that are cut out and kept. The sawn cutout is the rule of the trade (common practice, no
 * source): the blade's thickness is the gap at the crosscut ends, the sides are trimmed to match,
 * and the blank is two kerfs wider.
 */
class KeptCutoutTest {
  /** A board 400 wide, its opening 120 across the grain and 300 along it. */
  static String board(String l, String t, String w, String cut) {
    return """
    parts:
      board: {stock: ash, %1$s: 0 to 700, %2$s: 0 to 20, %3$s: 0 to 400, grain: %1$s}
      kept: {stock: ash, %1$s: 203 to 497, %2$s: 0 to 20, %3$s: 143 to 257, grain: %1$s}
    cuts:
      - cutout: {in: board, %1$s: 200 to 500, %3$s: 140 to 260, kept-as: kept, %4$s}
    """
        .formatted(l, t, w, cut);
  }

  private static final String SAW = "method: saw, kerf: 3, gap: 3";

  private static KeptBoard worked() {
    return Pieces.of(board("x", "y", "z", SAW)).keptBoard("board").orElseThrow();
  }

  private static Length mm(long mm) {
    return Length.mm(mm);
  }

  @Test
  void workedCaseHasABlankTwoKerfsWiderAndNoLonger() {
    assertEquals(mm(400), worked().board().finishedWidth());
    assertEquals(mm(406), worked().blankWidth());
    assertEquals(mm(700), worked().blankLength());
    assertEquals(mm(6), worked().oversize());
  }

  @Test
  void workedCaseGivesThreeStrips() {
    List<SawnBlank.Strip> strips = SawnBlank.of(worked()).strips();
    assertEquals(
        List.of(mm(140), mm(120), mm(140)), strips.stream().map(SawnBlank.Strip::width).toList());
    assertEquals(mm(400), strips.stream().map(SawnBlank.Strip::width).reduce(mm(0), Length::plus));
  }

  @Test
  void workedCaseKeepsAPieceAKerfShortAtEachEndAndTrimmedOnEachSide() {
    KeptCutout kept = worked().cutouts().getFirst();
    assertEquals(mm(294), kept.keptLength());
    assertEquals(mm(120), kept.widthOffTheTool());
    assertEquals(mm(114), kept.keptWidth());
    assertEquals(kept.along().length(), kept.keptLength().plus(mm(3).times(2)));
    assertEquals(kept.across().length(), kept.widthOffTheTool());
  }

  @Test
  void ripsComeFirstAndGoRightThroughThenTheMiddleStripIsCrosscutTwice() {
    List<SawCut> cuts = SawnBlank.of(worked()).cuts();
    assertEquals(List.of(1, 2, 3, 4), cuts.stream().map(SawCut::number).toList());
    assertEquals(List.of(true, true, false, false), cuts.stream().map(SawCut::isRip).toList());
    assertEquals(
        List.of(mm(140), mm(263), mm(200), mm(497)), cuts.stream().map(SawCut::at).toList());
    assertEquals(
        List.of(mm(700), mm(700), mm(120), mm(120)),
        cuts.stream().map(cut -> cut.run().length()).toList());
    assertEquals(
        List.of(mm(140), mm(120), mm(200), mm(294)), cuts.stream().map(SawCut::comesOff).toList());
  }

  @Test
  void everythingButTheKeptPieceIsGluedTogetherToTheFinishedBoard() {
    SawnBlank blank = SawnBlank.of(worked());
    List<Block> middle = blank.strips().get(1).blocks();
    assertEquals(
        List.of(Optional.empty(), Optional.of("kept"), Optional.empty()),
        middle.stream().map(Block::kept).toList());
    assertEquals(
        List.of(mm(200), mm(294), mm(200)),
        middle.stream().map(each -> each.along().length()).toList());
    assertEquals(1, blank.strips().getFirst().blocks().size());
    assertEquals(1, blank.strips().getLast().blocks().size());
  }

  @Test
  void kerfNotGivenIsThatOfTheShop() {
    String body = board("x", "y", "z", "method: saw, gap: 3").replace("203 to 497", "202 to 498");
    KeptCutout kept = Pieces.of("shop: {kerf: 2}\n" + body).kept().getFirst();
    assertEquals(mm(2), kept.kerf());
    assertEquals(mm(296), kept.keptLength());
  }

  /** Grain decides which cuts are rips, whichever axis it runs along. */
  @ParameterizedTest
  @CsvSource({"x, y, z", "x, z, y", "y, x, z", "y, z, x", "z, x, y", "z, y, x"})
  void grainDecidesWhichCutsAreRips(String length, String thickness, String width) {
    KeptBoard board =
        Pieces.of(board(length, thickness, width, SAW)).keptBoard("board").orElseThrow();
    KeptCutout kept = board.cutouts().getFirst();
    assertEquals(mm(406), board.blankWidth());
    assertEquals(mm(294), kept.keptLength());
    assertEquals(mm(114), kept.keptWidth());
    assertEquals(board.board().shoulder().on(kept.length()).length(), board.blankLength());
    assertEquals(length, kept.length().word());
    assertEquals(width, kept.width().word());
    assertTrue(SawnBlank.of(board).cuts(true).stream().allMatch(c -> c.run().to().equals(mm(700))));
  }

  @Test
  void routerTakesItsCutterAllRoundAndNothingIsGlued() {
    String body =
        board("x", "y", "z", "method: router, cutter: 6")
            .replace("203 to 497", "206 to 494")
            .replace("143 to 257", "146 to 254");
    KeptBoard board = Pieces.of(body).keptBoard("board").orElseThrow();
    assertEquals(mm(400), board.blankWidth());
    assertEquals(mm(288), board.cutouts().getFirst().keptLength());
    assertEquals(mm(108), board.cutouts().getFirst().keptWidth());
    assertEquals(mm(108), board.cutouts().getFirst().widthOffTheTool());
  }

  @Test
  void laserTakesAKerfOfTheUsersOwn() {
    String body =
        board("x", "y", "z", "method: laser, kerf: 0.2")
            .replace("203 to 497", "200.2 to 499.8")
            .replace("143 to 257", "140.2 to 259.8");
    KeptCutout kept = Pieces.of(body).kept().getFirst();
    assertEquals(Length.micrometres(299_600), kept.keptLength());
    assertEquals(Length.micrometres(119_600), kept.keptWidth());
  }

  @Test
  void twoPiecesOfOneStripShareTheRips() {
    String body =
        """
        parts:
          board: {stock: ash, x: 0 to 900, y: 0 to 20, z: 0 to 400, grain: x}
          one: {stock: ash, x: 103 to 297, y: 0 to 20, z: 143 to 257, grain: x}
          two: {stock: ash, x: 503 to 797, y: 0 to 20, z: 143 to 257, grain: x}
        cuts:
          - cutout: {in: board, x: 500 to 800, z: 140 to 260, kept-as: two, method: saw, kerf: 3, gap: 3}
          - cutout: {in: board, x: 100 to 300, z: 140 to 260, kept-as: one, method: saw, kerf: 3, gap: 3}
        """;
    KeptBoard board = Pieces.of(body).keptBoard("board").orElseThrow();
    assertEquals(mm(406), board.blankWidth());
    SawnBlank blank = SawnBlank.of(board);
    assertEquals(2, blank.cuts(true).size());
    assertEquals(4, blank.cuts(false).size());
    assertEquals(
        List.of(mm(100), mm(194), mm(200), mm(294), mm(100)),
        blank.strips().get(1).blocks().stream().map(each -> each.along().length()).toList());
  }

  @Test
  void eachStripWithAnOpeningCostsTwoKerfs() {
    String body =
        """
        parts:
          board: {stock: ash, x: 0 to 700, y: 0 to 20, z: 0 to 400, grain: x}
          low: {stock: ash, x: 203 to 497, y: 0 to 20, z: 53 to 147, grain: x}
          high: {stock: ash, x: 203 to 497, y: 0 to 20, z: 253 to 347, grain: x}
        cuts:
          - cutout: {in: board, x: 200 to 500, z: 50 to 150, kept-as: low, method: saw, kerf: 3, gap: 3}
          - cutout: {in: board, x: 200 to 500, z: 250 to 350, kept-as: high, method: saw, kerf: 3, gap: 3}
        """;
    KeptBoard board = Pieces.of(body).keptBoard("board").orElseThrow();
    assertEquals(mm(412), board.blankWidth());
    assertEquals(
        List.of(mm(50), mm(100), mm(100), mm(100), mm(50)),
        SawnBlank.of(board).strips().stream().map(SawnBlank.Strip::width).toList());
  }

  @Test
  void leftAndRightHandBoardsShareTheirMarksAndSoDoTheirKeptPieces() {
    String body =
        """
        parts:
          left: {stock: ash, x: 0 to 20, y: 0 to 400, z: 0 to 700, grain: z}
          right: {stock: ash, x: 780 to 800, y: 0 to 400, z: 0 to 700, grain: z}
          one: {stock: ash, x: 0 to 20, y: 103 to 217, z: 53 to 347, grain: z}
          two: {stock: ash, x: 780 to 800, y: 103 to 217, z: 53 to 347, grain: z}
        cuts:
          - notch: {in: left, y: 0 to 50, z: 0 to 60}
          - notch: {in: right, y: 0 to 50, z: 0 to 60}
          - holes: {in: left.right, at: {y: 300, z: 500}, diameter: 5, depth: 8}
          - holes: {in: right.left, at: {y: 300, z: 500}, diameter: 5, depth: 8}
          - cutout: {in: left, y: 100 to 220, z: 50 to 350, kept-as: one, method: saw, kerf: 3, gap: 3}
          - cutout: {in: right, y: 100 to 220, z: 50 to 350, kept-as: two, method: saw, kerf: 3, gap: 3}
        """;
    Piece piece = Pieces.of(body);
    assertEquals(piece.part("left").mark(), piece.part("right").mark());
    assertTrue(piece.part("right").mirrored());
    assertEquals(piece.part("one").mark(), piece.part("two").mark());
  }

  @Test
  void keptPieceIsNotTheSameMarkAsAPartOfItsShapeFromOtherStock() {
    String body =
        board("x", "y", "z", SAW)
            .replace(
                "cuts:",
                "  other: {stock: ash, x: 0 to 294, y: 50 to 70, z: 0 to 114, grain: x}\ncuts:");
    Piece piece = Pieces.of(body);
    assertNotEquals(piece.part("kept").mark(), piece.part("other").mark());
  }
}
