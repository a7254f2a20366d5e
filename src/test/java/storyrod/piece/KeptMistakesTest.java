package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.check.Checks;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;

/** What a person can get wrong about a cutout that is kept, and what is said of it. */
class KeptMistakesTest {
  private static final String SAW = "method: saw, kerf: 3, gap: 3";

  private static String with(String cut) {
    return KeptCutoutTest.board("x", "y", "z", cut);
  }

  private static Diagnostic only(String body) {
    List<Diagnostic> faults = Pieces.faultsOf(body);
    assertEquals(1, faults.size(), faults::toString);
    return faults.getFirst();
  }

  private static List<String> findings(String body) {
    Diagnostics diagnostics = new Diagnostics();
    Checks.run(Pieces.of(body), diagnostics);
    return diagnostics.sorted().stream()
        .filter(each -> each.code().equals("kept-cutout"))
        .map(Diagnostic::message)
        .toList();
  }

  @Test
  void wrongSizeIsToldWithTheRightFormulas() {
    Diagnostic fault = only(with(SAW).replace("203 to 497", "200 to 500"));
    assertEquals("kept-size", fault.code());
    assertEquals(
        "kept is 300 x 114 mm, but the saw leaves 294 x 114 mm of this opening", fault.message());
    assertEquals(
        List.of("write `x: 200 + 3 to 500 - 3` and `z: 140 + 3 to 260 - 3` for kept"),
        fault.hints());
  }

  @Test
  void hintUsesTheUsersOwnFormulas() {
    String body =
        "sizes: {from: 200, blade: 3, play: 2}\n"
            + with("method: saw, kerf: blade, gap: play + 1")
                .replace("200 to 500", "from to from + 300")
                .replace("203 to 497", "200 to 500");
    assertEquals(
        List.of(
            "write `x: from + blade to from + 300 - blade` and"
                + " `z: 140 + (play + 1) to 260 - (play + 1)` for kept"),
        only(body).hints());
  }

  @Test
  void jointThatLengthensAKeptPieceIsNamed() {
    String body =
        with(SAW)
                .replace(
                    "cuts:",
                    "  post: {stock: ash, x: 497 to 517, y: -20 to 40, z: 100 to 300, grain: z}\ncuts:")
            + "joints:\n  - dado: {end: kept.right, into: post, depth: 5}\n";
    Diagnostic fault = only(body);
    assertEquals("kept-size", fault.code());
    assertEquals(
        List.of("a joint lengthens it: let a joint lengthen only what is not cut out"),
        fault.hints());
  }

  @Test
  void sizeOfAPartUsedElsewhereIsToldInFigures() {
    String body = with(SAW).replace("143 to 257", "500 to 600");
    assertEquals(List.of("make it 294 mm long and 114 mm wide"), only(body).hints());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gap: 3 | kept-keys | a kept cutout needs the method by which it is cut out",
        "method: saw, kerf: 3 | kept-keys | `method: saw` needs `gap`",
        "method: router | kept-keys | `method: router` needs `cutter`",
        "method: laser | kept-keys | `method: laser` needs `kerf`",
        "method: saw, kerf: 3, gap: 3, cutter: 6 | kept-keys |"
            + " `cutter` means nothing with `method: saw`",
        "method: router, cutter: 6, gap: 1 | kept-keys |"
            + " `gap` means nothing with `method: router`",
        "method: saw, kerf: 3, gap: 60 | kept-size | nothing is left of an opening of 300 x 120 mm"
            + " with gaps of 3 mm at each end and 60 mm on each side",
        "method: router, cutter: 70 | kept-size | nothing is left of an opening of 300 x 120 mm"
            + " with gaps of 70 mm at each end and 70 mm on each side"
      })
  void eachMethodNeedsItsOwnKeys(String cut, String code, String message) {
    Diagnostic fault = only(with(cut));
    assertEquals(code, fault.code());
    assertEquals(message, fault.message());
  }

  @Test
  void waysOfKeepingNeedSomethingKept() {
    Diagnostic fault = only(with("gap: 3").replace("kept-as: kept, ", ""));
    assertEquals("`gap` says how a piece is kept, but this cutout keeps none", fault.message());
  }

  @Test
  void openingAtTheEdgeIsNoCutout() {
    Diagnostic fault = only(with(SAW).replace("z: 140 to 260", "z: 0 to 120"));
    assertEquals("cut-place", fault.code());
  }

  @Test
  void keptPieceIsOfItsBoardsStock() {
    String body =
        with(SAW)
            .replace("kept: {stock: ash", "kept: {stock: ply18")
            .replace("143 to 257, g", "143 to 257, g");
    Diagnostic fault = only(body.replaceFirst("(kept: .*y: 0 to )20", "$118"));
    assertEquals("kept is of ply18, but it is cut out of board, which is of ash", fault.message());
  }

  @Test
  void grainOfAPieceInItsOpeningIsThatOfTheBoard() {
    Diagnostic fault = only(with(SAW).replaceFirst("143 to 257, grain: x", "143 to 257, grain: z"));
    assertEquals("kept-grain", fault.code());
    assertEquals(List.of("write `grain: x` for kept"), fault.hints());
  }

  @Test
  void partIsCutOutOnceOnly() {
    String again = "  - cutout: {in: board, x: 550 to 650, z: 140 to 260, kept-as: kept, ";
    List<Diagnostic> faults =
        Pieces.faultsOf(
            with(SAW).replace("200 to 500", "200 to 500")
                + again.replace("550 to 650", "20 to 320").replace("z: 140 to 260", "z: 270 to 390")
                + SAW
                + "}\n");
    assertEquals(List.of("kept-twice"), faults.stream().map(Diagnostic::code).toList());
  }

  @Test
  void boardIsNotKeptOfItself() {
    assertEquals("kept-twice", only(with(SAW).replace("kept-as: kept", "kept-as: board")).code());
  }

  private static String second(String x, String z, String box, String cut) {
    return with(SAW)
            .replace(
                "cuts:", "  more: {stock: ash, %s, y: 0 to 20, grain: x}\ncuts:".formatted(box))
        + "  - cutout: {in: board, x: %s, z: %s, kept-as: more, %s}\n".formatted(x, z, cut);
  }

  @Test
  void ripsCannotFreeTwoPiecesOfOverlappingStrips() {
    Diagnostic fault =
        only(second("550 to 650", "200 to 300", "x: 553 to 647, z: 203 to 297", SAW));
    assertEquals("no rip right through board frees both kept and more", fault.message());
  }

  @Test
  void openingsLeaveWoodBetweenThem() {
    Diagnostic fault =
        only(second("500 to 650", "140 to 260", "x: 503 to 647, z: 143 to 257", SAW));
    assertEquals(
        "the openings for kept and more in board leave no wood between them", fault.message());
  }

  @Test
  void oneBoardIsCutByOneMethod() {
    Diagnostic fault =
        only(
            second(
                "550 to 650",
                "140 to 260",
                "x: 556 to 644, z: 146 to 254",
                "method: router, cutter: 6"));
    assertEquals("kept-together", fault.code());
  }

  @Test
  void pieceIsNotCutOutOfAKeptPiece() {
    String body =
        with(SAW)
                .replace(
                    "cuts:",
                    "  more: {stock: ash, x: 303 to 397, y: 0 to 20, z: 173 to 227, grain: x}\ncuts:")
            + "  - cutout: {in: kept, x: 300 to 400, z: 170 to 230, kept-as: more, "
            + SAW
            + "}\n";
    assertEquals("more is cut out of kept, which is itself cut out of board", only(body).message());
  }

  @Test
  void sheetThatIsRippedAndGluedIsWarnedOfWithAReason() {
    String body =
        with(SAW).replace("stock: ash", "stock: ply18").replace("y: 0 to 20", "y: 0 to 18");
    assertEquals(1, findings(body).stream().filter(m -> m.contains("is of sheet stock")).count());
  }

  @Test
  void noGapAndUnevenGapsAreWarnedOf() {
    assertEquals(
        List.of(
            "kept fits its opening across the grain without any gap, and will stick when the wood"
                + " swells"),
        findings(with("method: saw, kerf: 3, gap: 0").replace("143 to 257", "140 to 260")));
    assertEquals(
        List.of("kept has a gap of 4 mm before it and of 2 mm behind it on x"),
        findings(with(SAW).replace("203 to 497", "204 to 498")));
  }

  @Test
  void stripThinnerThanTheBoardIsWarnedOf() {
    String body =
        with(SAW).replace("z: 140 to 260", "z: 15 to 135").replace("143 to 257", "18 to 132");
    assertEquals(
        List.of(
            "a strip of 15 mm is ripped off board, which is 20 mm thick: it bends at the saw and in"
                + " the clamps"),
        findings(body));
  }

  @Test
  void soundKeptPieceHasNoFinding() {
    assertEquals(List.of(), findings(with(SAW)));
  }
}
