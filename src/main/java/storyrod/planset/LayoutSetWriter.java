package storyrod.planset;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.drawing.Drawing;
import storyrod.drawing.LayoutDrawing;
import storyrod.drawing.Notation;
import storyrod.drawing.SawnAlike;
import storyrod.drawing.SawnPiece;
import storyrod.drawing.Size;
import storyrod.drawing.SvgWriter;
import storyrod.layout.LayoutJob.Stock;
import storyrod.measure.Length;
import storyrod.words.Words;

/**
 * Writes the files of layouts of plain lists: bytes by file name, the same for the same layouts.
 */
public final class LayoutSetWriter {
  private static final double HEAD_MM = 1 + TableHeights.H1_MM;
  private static final double SHARE = 0.62;

  private final LayoutSet set;
  private final Texts texts;
  private final Paper paper;
  private final List<SawnStock> stocks;
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();

  private LayoutSetWriter(LayoutSet set, Paper paper, Words words) {
    this.set = set;
    this.texts = new Texts(set.format(), words);
    this.paper = paper;
    this.stocks =
        IntStream.range(0, set.job().stock().size())
            .mapToObj(this::stock)
            .filter(stock -> !stock.sheets().isEmpty())
            .toList();
    stocks.forEach(this::draw);
  }

  /**
   * The files by name: the pages, a drawing for each piece of stock that looks different, the parts
   * where they lie, and the cuts.
   *
   * @throws UnprintableTextException if a text holds a character that no font has
   */
  public static Map<String, byte[]> write(LayoutSet set, Paper paper, Words words) {
    return new LayoutSetWriter(set, paper, words).write();
  }

  private Map<String, byte[]> write() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("layouts.pdf", pdf());
    drawings.forEach(
        (name, drawing) ->
            files.put(
                "drawings/" + name + ".svg",
                SvgWriter.write(drawing, name).getBytes(StandardCharsets.UTF_8)));
    files.put("parts.csv", LayoutLists.parts(stocks, texts));
    files.put("cuts.csv", LayoutLists.cuts(stocks, texts));
    return files;
  }

  private SawnStock stock(int index) {
    Stock stock = set.job().stock().get(index);
    List<SawnAlike> sheets = SawnAlike.of(set.pieces(index));
    int count = sheets.stream().mapToInt(sheet -> sheet.numbers().size()).sum();
    return new SawnStock(
        Integer.toString(index + 1),
        set.lengthsOnly() ? "length" : "sheet",
        stock.name(),
        ListPage.size(set, stock.length(), stock.width(), texts),
        texts.say("list.stock-used", ListPage.counted(set, count, texts)),
        sheets);
  }

  private void draw(SawnStock stock) {
    Length longest = set.job().stock().stream().map(Stock::length).reduce(Length.ZERO, Length::max);
    Size room = new Size(paper.textWidthMm(), paper.textHeightMm() * SHARE);
    Notation notation = new Notation(set.format(), texts.words());
    for (SawnAlike sheet : stock.sheets()) {
      SawnPiece piece = sheet.piece();
      drawings.put(
          stock.drawingName(sheet),
          set.lengthsOnly()
              ? LayoutDrawing.bar(piece, notation, longest, paper.textWidthMm())
              : LayoutDrawing.draw(piece, notation, room));
    }
  }

  private byte[] pdf() {
    String xhtml = Templates.SHARED.render("layouts/list.ftl", texts.words(), data());
    PdfPages.About about =
        new PdfPages.About(set.title(), "", texts.words().language(), Optional.empty());
    return PlainDigits.with(() -> PdfPages.write(xhtml, drawings, about));
  }

  private Map<String, Object> data() {
    Layouts.Print print = Layouts.Print.below(HEAD_MM, texts, paper, drawings);
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("say", new Said(texts));
    data.put("language", texts.words().language());
    data.put("paper", paper);
    data.put("cover", Map.of("name", set.title(), "maker", "", "edition", ""));
    data.put("list", ListPage.of(set, stocks, texts));
    data.put("layouts", Layouts.onOwnPages(stocks, print));
    return data;
  }
}
