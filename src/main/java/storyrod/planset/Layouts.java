package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.drawing.Drawing;
import storyrod.stock.StockPlan.SawCut;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/** The layouts of the sheets, one entry for each sheet stock. */
public record Layouts(List<Stock> stocks) {
  private static final int COLUMNS = 3;

  public Layouts {
    stocks = List.copyOf(stocks);
  }

  /** A stock with its sheets and a sentence on how few there could be. */
  public record Stock(String title, String size, String bound, List<Sheet> sheets) {}

  /**
   * One sheet.
   *
   * @param cuts the cuts in order, in up to three columns of about the same height
   */
  public record Sheet(int number, int of, DrawingBox drawing, List<List<Cut>> cuts) {}

  /** A cut: its number, its direction in words, and the setting of the fence. */
  public record Cut(int number, String direction, String fence) {}

  static String drawingName(SheetPlan plan, int number) {
    return "layout-" + plan.stock().name() + "-" + number;
  }

  static Layouts of(PlanSet set, Texts texts, Paper paper) {
    return new Layouts(
        set.stock().layouts().stream()
            .filter(plan -> !plan.sheets().isEmpty())
            .map(plan -> stock(set, plan, texts, paper))
            .toList());
  }

  private static Stock stock(PlanSet set, SheetPlan plan, Texts texts, Paper paper) {
    List<Drawing> drawings = drawings(set, plan);
    List<Sheet> sheets =
        IntStream.range(0, plan.sheets().size())
            .mapToObj(i -> sheet(plan, i, box(plan, drawings.get(i), i, paper), texts))
            .toList();
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

  private static DrawingBox box(SheetPlan plan, Drawing drawing, int index, Paper paper) {
    return DrawingBox.within(
        drawingName(plan, index + 1), drawing, paper.textWidthMm(), paper.textHeightMm() * 0.62);
  }

  private static Sheet sheet(SheetPlan plan, int index, DrawingBox box, Texts texts) {
    SheetLayout layout = plan.sheets().get(index);
    List<Cut> cuts = layout.cuts().stream().map(cut -> cut(cut, texts)).toList();
    return new Sheet(index + 1, plan.sheets().size(), box, columns(cuts));
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
