package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.drawing.Drawing;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** The layouts of the sheets, one entry for each sheet stock. */
public record Layouts(List<Stock> stocks) {
  private static final int COLUMNS = 3;
  private static final double BELOW_MM = 4;
  private static final double LEAST_DRAWING_MM = 60;

  public Layouts {
    stocks = List.copyOf(stocks);
  }

  /** A stock with its sheets and a sentence on how few there could be. */
  public record Stock(String title, String size, String bound, List<Sheet> sheets) {}

  /**
   * One sheet.
   *
   * @param cuts the cuts in order, in up to three columns of about the same height
   * @param breaks whether it begins a page
   */
  public record Sheet(
      int number, int of, DrawingBox drawing, List<List<Cut>> cuts, boolean breaks) {}

  /** A cut: its number, its direction in words, and the setting of the fence. */
  public record Cut(int number, String direction, String fence) {}

  static String drawingName(SheetPlan plan, int number) {
    return "layout-" + plan.stock().name() + "-" + number;
  }

  static Layouts of(PlanSet set, Texts texts, Paper paper) {
    double lead = TableHeights.lead(texts.say("layouts.lead"), paper.textWidthMm());
    double title = 1 + TableHeights.H1_MM + lead;
    Sheets on = new Sheets(texts, paper, title, new PageBreaks(paper.roomMm(), title));
    return new Layouts(
        set.stock().layouts().stream()
            .filter(plan -> !plan.sheets().isEmpty())
            .map(plan -> stock(set, plan, on))
            .toList());
  }

  /** How sheets are worded, on what paper, and where their pages begin. */
  private record Sheets(Texts texts, Paper paper, double titleMm, PageBreaks breaks) {}

  private static Stock stock(PlanSet set, SheetPlan plan, Sheets on) {
    List<Drawing> drawings = drawings(set, plan);
    List<Sheet> sheets =
        IntStream.range(0, plan.sheets().size())
            .mapToObj(i -> sheet(plan, drawings.get(i), i, on))
            .toList();
    Texts texts = on.texts();
    return new Stock(
        texts.stock(plan.stock()), Shopping.size(plan.stock(), texts), bound(plan, texts), sheets);
  }

  private static List<Drawing> drawings(PlanSet set, SheetPlan plan) {
    List<Drawing> drawings = set.drawings().layouts().get(plan.stock().name());
    if (drawings == null || drawings.size() != plan.sheets().size()) {
      throw new IllegalStateException("bug: no drawing for each sheet of " + plan.stock().name());
    }
    return drawings;
  }

  private static Sheet sheet(SheetPlan plan, Drawing drawing, int index, Sheets on) {
    SheetLayout layout = plan.sheets().get(index);
    List<List<Cut>> columns =
        columns(layout.cuts().stream().map(cut -> cut(cut, on.texts())).toList());
    int of = plan.sheets().size();
    double beside = headingsMm(index, of) + tableMm(columns);
    double room = on.paper().roomMm() - on.titleMm() - beside;
    DrawingBox box =
        DrawingBox.within(
            drawingName(plan, index + 1),
            drawing,
            on.paper().textWidthMm(),
            Math.max(room, LEAST_DRAWING_MM));
    boolean breaks =
        on.breaks().before(beside + box.heightMm(), index == 0 ? TableHeights.ABOVE_H2_MM : 0);
    return new Sheet(index + 1, of, box, columns, breaks);
  }

  private static double headingsMm(int index, int of) {
    return (index == 0 ? TableHeights.H2_MM + TableHeights.LINE_MM : 0)
        + (of > 1 ? TableHeights.H3_MM : 0);
  }

  private static double tableMm(List<List<Cut>> columns) {
    double rows = columns.stream().mapToInt(column -> column.size() + 1).max().orElse(0);
    return rows * TableHeights.ROW_MM + BELOW_MM;
  }

  private static Cut cut(SawCut cut, Texts texts) {
    String direction = texts.say(cut.alongLength() ? "layout.along" : "layout.across");
    return new Cut(cut.number(), direction, texts.length(cut.fence()));
  }

  private static List<List<Cut>> columns(List<Cut> cuts) {
    int height = Math.max(1, Math.ceilDiv(cuts.size(), COLUMNS));
    List<List<Cut>> columns = new ArrayList<>();
    for (int from = 0; from < cuts.size(); from += height) {
      columns.add(cuts.subList(from, Math.min(from + height, cuts.size())));
    }
    return columns;
  }

  private static String bound(SheetPlan plan, Texts texts) {
    int sheets = plan.sheets().size();
    if (sheets == plan.lowerBound()) {
      return texts.say(sheets == 1 ? "layout.one-is-fewest" : "layout.fewest", sheets);
    }
    return texts.say("layout.at-least", sheets, plan.lowerBound());
  }
}
