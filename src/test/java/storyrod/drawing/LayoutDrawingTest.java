package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Tone;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.SheetLayout;

class LayoutDrawingTest {
  private static final Drawing DRAWING =
      draw(BenchSheets.one(), BenchParts.inInches(), new Size(180, 120));

  private static Drawing draw(SheetLayout sheet, Piece piece, Size area) {
    return LayoutDrawing.draw(SawnPiece.of(sheet, piece), Notation.of(piece), area);
  }

  @Test
  void textsLieApartAndOnThePaper() {
    assertEquals(List.of(), Clean.textFaults(DRAWING));
  }

  @Test
  void everyPartAndEveryCutIsNamed() throws Exception {
    List<String> texts = SvgWriterTest.texts(SvgWriterTest.parse(SvgWriter.write(DRAWING)));
    List.of("A", "B", "D", "G", "H", "K").forEach(mark -> assertTrue(texts.contains(mark), mark));
    BenchSheets.one()
        .cuts()
        .forEach(cut -> assertTrue(texts.contains("" + cut.number()), "cut " + cut.number()));
  }

  @Test
  void onTheSheetsOfTheBenchEveryCutHasItsNumberAndTextsLieApart() {
    Piece piece = WindowBench.piece();
    for (SheetLayout sheet : WindowBench.sheets(piece)) {
      Drawing drawing = draw(sheet, piece, WindowBench.LAYOUT_AREA);
      assertEquals(List.of(), Clean.textFaults(drawing));
      List<String> texts = Painter.texts(drawing).stream().map(PlacedText::text).toList();
      sheet.cuts().forEach(cut -> assertTrue(texts.contains("" + cut.number()), texts.toString()));
      sheet.placed().forEach(each -> assertTrue(texts.contains(each.mark()), each.mark()));
    }
  }

  /** At 1:50 the short cuts have no room for their numbers. */
  @Test
  void onACrowdedSheetNumbersStandOffWithLeaders() {
    Piece piece = WindowBench.piece();
    Size small = new Size(90, 50);
    for (SheetLayout sheet : WindowBench.sheets(piece)) {
      Drawing drawing = draw(sheet, piece, small);
      assertEquals(List.of(), Clean.textFaults(drawing));
      List<String> texts = Painter.texts(drawing).stream().map(PlacedText::text).toList();
      sheet.cuts().forEach(cut -> assertTrue(texts.contains("" + cut.number()), texts.toString()));
    }
  }

  @Test
  void theSheetIsToScaleWithItsSize() {
    double factor = DRAWING.scale().orElseThrow().factor();
    List<Dimension> sizes = Clean.dimensions(DRAWING);
    assertEquals(List.of("96", "48"), sizes.stream().map(Dimension::text).toList());
    assertEquals(96 * 25.4 * factor, sizes.getFirst().to().x() - sizes.getFirst().from().x(), 1e-9);
  }

  /** Parts, offcuts and waste fill the sheet but for the kerfs. */
  @Test
  void theWasteIsWhatIsNeitherPartNorOffcut() {
    double parts = 0;
    double waste = 0;
    for (Drawing.Element element : Clean.flat(DRAWING.elements())) {
      if (element instanceof Area area) {
        double size = area.rings().stream().mapToDouble(LayoutDrawingTest::size).sum();
        parts += area.tone() == Tone.PALE ? size : 0;
        waste += area.tone() == Tone.HATCH ? 2 * size(area.rings().getFirst()) - size : 0;
      }
    }
    double factor = DRAWING.scale().orElseThrow().factor();
    double square = 25.4 * factor * 25.4 * factor;
    double used = 51.75 * 15.75 + 15.5 * 15.75 + 30 * 17.875 + 14 * 9 + 4.5 * 31.625;
    double offcuts = 43.625 * 15.75 + 60 * 13.625;
    assertEquals(used * square, parts, 1e-6);
    double left = 96 * 48 - used - offcuts;
    double sawn =
        BenchSheets.one().cuts().stream()
            .mapToDouble(cut -> cut.to().minus(cut.from()).toMm() / 25.4 / 8)
            .sum();
    assertEquals(left - sawn, waste / square, 1e-6);
  }

  private static double size(List<Drawing.At> ring) {
    return (ring.get(2).x() - ring.get(0).x()) * (ring.get(2).y() - ring.get(0).y());
  }

  @Test
  void twoRunsGiveEqualText() {
    Drawing again = draw(BenchSheets.one(), BenchParts.inInches(), new Size(180, 120));
    assertEquals(SvgWriter.write(DRAWING), SvgWriter.write(again));
  }
}
