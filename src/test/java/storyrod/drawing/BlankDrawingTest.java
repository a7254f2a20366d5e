package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import storyrod.drawing.Drawing.Dimension;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Pieces;

class BlankDrawingTest {
  private static Drawing drawn(String x, String z, String box, String cut, Size area) {
    Piece piece =
        Pieces.of(
            """
            parts:
              board: {stock: ash, x: 0 to 700, y: 0 to 20, z: 0 to 400, grain: x}
              kept: {stock: ash, %s, y: 0 to 20, grain: x}
            cuts:
              - cutout: {in: board, x: %s, z: %s, kept-as: kept, %s}
            """
                .formatted(box, x, z, cut));
    Mark board = piece.marks().getFirst();
    return BlankDrawing.draw(board, piece, area);
  }

  private static List<String> texts(Drawing drawing) {
    return Painter.texts(drawing).stream().map(PlacedText::text).toList();
  }

  @ParameterizedTest
  @CsvSource({"180, 200", "180, 100", "120, 80"})
  void sawnBlankShowsItsCutsInOrderWithStripsAndKerfs(double width, double height) {
    Drawing drawing =
        drawn(
            "200 to 500",
            "140 to 260",
            "x: 203 to 497, z: 143 to 257",
            "method: saw, kerf: 3, gap: 3",
            new Size(width, height));
    assertEquals(List.of(), Clean.textFaults(drawing));
    List<String> texts = texts(drawing);
    List.of("1", "2", "3", "4", "B", "406", "700", "294")
        .forEach(text -> assertTrue(texts.contains(text), text + " in " + texts));
    List<Dimension> sizes = Clean.dimensions(drawing);
    assertEquals(2, sizes.stream().filter(each -> each.text().equals("140")).count());
    assertEquals(1, sizes.stream().filter(each -> each.text().equals("120")).count());
  }

  @ParameterizedTest
  @CsvSource({"60 to 90, 63 to 87", "20 to 50, 23 to 47", "340 to 380, 343 to 377"})
  void narrowStripsNearAnEdgeStayReadable(String z, String box) {
    Drawing drawing =
        drawn(
            "20 to 120",
            z,
            "x: 23 to 117, z: " + box,
            "method: saw, kerf: 3, gap: 3",
            new Size(180, 120));
    assertEquals(List.of(), Clean.textFaults(drawing));
  }

  @ParameterizedTest
  @CsvSource({"'method: router, cutter: 6', 6", "'method: laser, kerf: 0.2', 0.2"})
  void wholeBoardShowsTheCutThatGoesRound(String cut, String gap) {
    Drawing drawing =
        drawn(
            "200 to 500",
            "140 to 260",
            "x: 200 + %1$s to 500 - %1$s, z: 140 + %1$s to 260 - %1$s".formatted(gap),
            cut,
            new Size(180, 120));
    assertEquals(List.of(), Clean.textFaults(drawing));
    assertTrue(texts(drawing).containsAll(List.of("1", "400", "120", "300", "200")));
  }
}
