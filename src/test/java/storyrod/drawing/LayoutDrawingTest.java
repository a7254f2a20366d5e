package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.SawnPiece.Laid;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.SheetLayout;

class LayoutDrawingTest {
  private static final Drawing DRAWING =
      draw(BenchSheets.one(), BenchParts.inInches(), new Size(180, 120));

  private static final Piece NIGHTSTAND = AllProjects.named("nightstand").piece();

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

  /** A sheet of 1525 x 1525 mm with a row of parts at its edge, sawn off in one strip. */
  private static SawnPiece withRow(long length, long width) {
    Length kerf = Length.mm(3);
    List<Laid> row =
        IntStream.range(0, 3)
            .mapToObj(
                i ->
                    new Laid(
                        "part#" + i,
                        "ABC".substring(i, i + 1),
                        "Part",
                        new LayoutJob.Area(
                            Length.mm(i * (length + 3)),
                            Length.ZERO,
                            Length.mm(length),
                            Length.mm(width)),
                        false,
                        true))
            .toList();
    Length side = Length.mm(1525);
    SawCut cut = new SawCut(1, true, Length.mm(width), Length.ZERO, side, Length.mm(width));
    LayoutJob.Area left =
        new LayoutJob.Area(Length.ZERO, Length.mm(width + 3), side, Length.mm(1525 - width - 3));
    return new SawnPiece(side, side, false, kerf, row, List.of(cut), List.of(left), List.of());
  }

  private static Drawing draw(SawnPiece sheet) {
    return LayoutDrawing.draw(sheet, Notation.of(NIGHTSTAND), new Size(174, 145));
  }

  private static List<Area> parts(Drawing drawing) {
    return Clean.flat(drawing.elements()).stream()
        .filter(each -> each instanceof Area area && area.tone() == Tone.PALE)
        .map(Area.class::cast)
        .toList();
  }

  /** At 1:20, to which the whole sheet has room, the strip is as narrow as a line of text. */
  @Test
  void aSheetWithPartsTooSmallForTheirSizesIsBrokenOffWhereMuchIsLeftOver() {
    Drawing drawing = draw(withRow(364, 62));
    assertEquals("1:10", drawing.scale().orElseThrow().toString());
    assertTrue(drawing.heightMm() <= 145, drawing.heightMm() + " mm");
    parts(drawing).forEach(part -> assertEquals(36.4 * 6.2, size(part.rings().getFirst()), 1e-3));
    List<String> texts = Painter.texts(drawing).stream().map(PlacedText::text).toList();
    assertEquals(3, texts.stream().filter(each -> each.equals("364 × 62")).count(), "" + texts);
    assertEquals(
        List.of("1525", "1525"), Clean.dimensions(drawing).stream().map(Dimension::text).toList());
    assertEquals(List.of(), Clean.textFaults(drawing));
    assertEquals(List.of(), Covered.textsOnLines(drawing));
  }

  @Test
  void aSheetWithPartsThatBearTheirSizesStaysWhole() {
    Drawing drawing = draw(withRow(500, 400));
    assertEquals("1:20", drawing.scale().orElseThrow().toString());
    Dimension high = Clean.dimensions(drawing).getLast();
    assertEquals(1525 / 20.0, DimensionLines.lengthMm(high), 1e-9);
  }

  /** Nothing that is left over is wide enough: the whole sheet stays at the smaller scale. */
  @Test
  void aSheetThatIsFullIsNotBroken() {
    SawnPiece row = withRow(364, 62);
    LayoutJob.Area tall =
        new LayoutJob.Area(Length.mm(1200), Length.ZERO, Length.mm(300), Length.mm(1500));
    List<Laid> parts = new ArrayList<>(row.parts());
    parts.add(new Laid("tall", "D", "Tall", tall, true, true));
    Drawing drawing =
        draw(
            new SawnPiece(
                row.length(),
                row.width(),
                false,
                row.kerf(),
                parts,
                row.cuts(),
                row.offcuts(),
                List.of()));
    assertEquals("1:20", drawing.scale().orElseThrow().toString());
  }

  @Test
  void twoRunsGiveEqualText() {
    Drawing again = draw(BenchSheets.one(), BenchParts.inInches(), new Size(180, 120));
    assertEquals(SvgWriter.write(DRAWING), SvgWriter.write(again));
  }
}
