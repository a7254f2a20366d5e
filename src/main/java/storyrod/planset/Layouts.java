package storyrod.planset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing;
import storyrod.drawing.Packing;
import storyrod.drawing.SawnAlike;
import storyrod.measure.Length;
import storyrod.planset.CutReplay.Result;
import storyrod.planset.CutReplay.Step;

/** The layouts of sheets and lengths, one entry for each stock. */
public record Layouts(List<Stock> stocks) {
  static final int COLUMNS = 2;
  private static final double BELOW_MM = 4;
  private static final double BELOW_BAR_MM = 0.5;
  static final double LEAST_DRAWING_MM = 60;

  public Layouts {
    stocks = List.copyOf(stocks);
  }

  /** A stock with its sheets and a sentence on how few there could be. */
  public record Stock(String title, String size, String bound, List<Sheet> sheets) {
    private Stock broken(Set<Sheet> begin) {
      return with(sheets.stream().map(sheet -> sheet.breaking(begin.contains(sheet))).toList());
    }

    private Stock with(List<Sheet> others) {
      return new Stock(title, size, bound, others);
    }
  }

  /**
   * One sheet, or several that are alike.
   *
   * @param first whether it is the first of its stock
   * @param headMm how high its headings are, with the sentence on the stock
   * @param belowMm what its cuts take below its drawing
   * @param heading empty where there is only one
   * @param bar whether only lengths matter, so that several are shown on a page
   * @param cuts the cuts in order, in columns of about the same height
   * @param breaks whether it begins a page
   */
  public record Sheet(
      boolean first,
      double headMm,
      double belowMm,
      String heading,
      boolean bar,
      DrawingBox drawing,
      List<List<Cut>> cuts,
      boolean breaks) {
    private Sheet onOwnPage(boolean ofFirstStock) {
      boolean isVeryFirst = first && ofFirstStock;
      return breaking(bar ? breaks : !isVeryFirst);
    }

    private Sheet breaking(boolean begins) {
      return new Sheet(first, headMm, belowMm, heading, bar, drawing, cuts, begins);
    }

    /** With what stands above it within a page. */
    private double heightMm() {
      double above = first ? TableHeights.ABOVE_H2_MM : 0;
      return above + headMm + drawing.heightMm() + belowMm;
    }
  }

  /**
   * A cut: its number, from what it is cut, its direction in words, the setting of the fence, and
   * what falls off.
   */
  public record Cut(int number, String of, String direction, String fence, String gives) {}

  /**
   * How layouts are worded, on what paper, and where their pages begin.
   *
   * @param titleMm what stands above the first of them
   */
  record Print(
      Texts texts, Paper paper, double titleMm, PageBreaks breaks, Map<String, Drawing> drawings) {
    static Print below(double titleMm, Texts texts, Paper paper, Map<String, Drawing> drawings) {
      PageBreaks breaks = new PageBreaks(paper.roomMm(), titleMm);
      return new Print(texts, paper, titleMm, breaks, drawings);
    }

    /** What stands above a sheet at the head of its page: only the first has the title there. */
    private double aboveMm() {
      return breaks.atMm() == titleMm ? titleMm : 0;
    }
  }

  static Layouts of(PlanSet set, Texts texts, Paper paper) {
    double lead = TableHeights.lead(texts.say("layouts.lead"), paper.textWidthMm());
    double title = 1 + TableHeights.H1_MM + lead;
    Print print = Print.below(title, texts, paper, drawings(set));
    return of(stocks(set, texts), print).spread(title, paper.roomMm());
  }

  /** The same on as many pages, of which the last is filled like any other. */
  private Layouts spread(double titleMm, double roomMm) {
    List<Sheet> sheets = stocks.stream().flatMap(stock -> stock.sheets().stream()).toList();
    List<Packing.Item> items =
        IntStream.range(0, sheets.size())
            .mapToObj(i -> Math.min(roomMm, sheets.get(i).heightMm() + (i == 0 ? titleMm : 0)))
            .map(Packing.Item::of)
            .toList();
    Set<Sheet> begin =
        Packing.evenPages(items, roomMm, Math.max(1, sheets.size())).stream()
            .skip(1)
            .map(page -> sheets.get(page.first()))
            .collect(
                Collectors.toCollection(() -> Collections.newSetFromMap(new IdentityHashMap<>())));
    long pages = sheets.stream().filter(Sheet::breaks).count();
    return pages == begin.size()
        ? new Layouts(stocks.stream().map(stock -> stock.broken(begin)).toList())
        : this;
  }

  static Layouts of(List<SawnStock> stocks, Print print) {
    return new Layouts(stocks.stream().map(stock -> stock(stock, print)).toList());
  }

  /** As {@link #of}, but no page shows two sheets; of bars it shows as many as it holds. */
  static Layouts onOwnPages(List<SawnStock> stocks, Print print) {
    List<Stock> all = of(stocks, print).stocks();
    return new Layouts(
        all.stream()
            .map(
                stock ->
                    stock.with(
                        stock.sheets().stream()
                            .map(sheet -> sheet.onOwnPage(stock == all.getFirst()))
                            .toList()))
            .toList());
  }

  private static List<SawnStock> stocks(PlanSet set, Texts texts) {
    return ProjectStocks.of(set, texts).stream().map(ProjectStocks::stock).toList();
  }

  /** The drawings of the sheets that are shown, by the names that the pages use for them. */
  static Map<String, Drawing> drawings(PlanSet set) {
    Map<String, Drawing> drawings = new LinkedHashMap<>();
    Texts texts = Texts.of(set.piece());
    for (ProjectStocks each : ProjectStocks.of(set, texts)) {
      SawnStock stock = each.stock();
      stock
          .sheets()
          .forEach(sheet -> drawings.put(stock.drawingName(sheet), each.drawing(set, sheet)));
    }
    return drawings;
  }

  private static Stock stock(SawnStock stock, Print print) {
    List<Sheet> sheets = new ArrayList<>();
    for (SawnAlike sheet : stock.sheets()) {
      sheets.add(sheet(stock, sheet, print));
    }
    return new Stock(stock.title(), stock.size(), stock.bound(), sheets);
  }

  private static Sheet sheet(SawnStock stock, SawnAlike sheet, Print print) {
    boolean isFirst = sheet == stock.sheets().getFirst();
    String heading = stock.count() > 1 ? heading(stock, sheet, print.texts()) : "";
    List<List<Cut>> columns =
        sheet.piece().lengthsOnly() ? List.of() : columns(cuts(stock, sheet, print.texts()));
    double below = belowMm(sheet.piece().lengthsOnly(), columns, print);
    double head = (isFirst ? headOfStock(stock, print) : 0) + headOfSheet(heading);
    double beside = head + below;
    double room = print.paper().roomMm() - print.aboveMm() - beside;
    String name = stock.drawingName(sheet);
    DrawingBox box =
        DrawingBox.within(
            name,
            print.drawings().get(name),
            print.paper().textWidthMm(),
            Math.max(room, LEAST_DRAWING_MM));
    double above = isFirst ? TableHeights.ABOVE_H2_MM : 0;
    boolean breaks = print.breaks().before(beside + box.heightMm(), above);
    return new Sheet(
        isFirst, head, below, heading, sheet.piece().lengthsOnly(), box, columns, breaks);
  }

  /** The room for a drawing below the headings of a sheet, above so many cuts. */
  static double roomMm(int cuts, Texts texts, Paper paper) {
    double heads = TableHeights.H2_MM + TableHeights.LINE_MM + TableHeights.H3_MM;
    double row = TableHeights.row(List.of(TableHeights.size(texts.length(Length.mm(1)))));
    double table = TableHeights.ROW_MM + Math.ceilDiv(cuts, COLUMNS) * row;
    return paper.roomMm() - heads - BELOW_MM - table;
  }

  private static String heading(SawnStock stock, SawnAlike sheet, Texts texts) {
    String what = "layout." + stock.noun();
    return texts.say(sheet.numbers().size() == 1 ? what : what + "s", sheet.range(), stock.count());
  }

  private static double headOfStock(SawnStock stock, Print print) {
    String sentence = stock.size() + ". " + stock.bound();
    double height = TableHeights.text(sentence, print.paper().textWidthMm());
    return TableHeights.H2_MM + Math.max(TableHeights.LINE_MM, height);
  }

  private static double headOfSheet(String heading) {
    return heading.isEmpty() ? 0 : TableHeights.H3_MM;
  }

  /** Bars have no table of cuts. */
  private static double belowMm(boolean bar, List<List<Cut>> columns, Print print) {
    return bar
        ? BELOW_BAR_MM
        : BELOW_MM + new CutTable(columns, print.texts(), print.paper().textWidthMm()).heightMm();
  }

  private static List<Cut> cuts(SawnStock stock, SawnAlike sheet, Texts texts) {
    return CutReplay.of(sheet.piece()).stream().map(step -> cut(stock, step, texts)).toList();
  }

  private static Cut cut(SawnStock stock, Step step, Texts texts) {
    return new Cut(
        step.cut().number(),
        from(stock, step, texts),
        direction(step, texts),
        texts.length(step.cut().fence()),
        Stream.concat(step.gives().stream(), step.leaves().stream())
            .map(each -> word(each, step, texts))
            .collect(Collectors.joining(", ")));
  }

  /** The piece in hand, in words. */
  static String from(SawnStock stock, Step step, Texts texts) {
    return step.of() == 0
        ? texts.say("layout.whole." + stock.noun())
        : texts.say("layout.piece", step.of());
  }

  static String direction(Step step, Texts texts) {
    return texts.say(step.cut().alongLength() ? "layout.along" : "layout.across");
  }

  static String word(Result result, Step step, Texts texts) {
    return switch (result.kind()) {
      case PART -> result.mark();
      case PIECE -> texts.say("layout.piece", step.cut().number());
      case OFFCUT -> texts.say("layout.offcut-word");
      case WASTE -> texts.say("layout.waste");
    };
  }

  private static List<List<Cut>> columns(List<Cut> cuts) {
    int height = Math.max(1, Math.ceilDiv(cuts.size(), COLUMNS));
    List<List<Cut>> columns = new ArrayList<>();
    for (int from = 0; from < cuts.size(); from += height) {
      columns.add(cuts.subList(from, Math.min(from + height, cuts.size())));
    }
    return columns;
  }
}
