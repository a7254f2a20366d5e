package storyrod.planset;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan;
import storyrod.measure.Length;

/**
 * The page before the layouts of lists: what was found, from what it is sawn, and the parts.
 *
 * @param costs whether costs are known
 */
public record ListPage(
    String sentence,
    String used,
    String kerf,
    boolean lengthsOnly,
    boolean costs,
    List<StockRow> stock,
    List<PartRow> parts) {
  public ListPage {
    stock = List.copyOf(stock);
    parts = List.copyOf(parts);
  }

  /** A stock, how many pieces of it are used and how many there are, and their cost. */
  public record StockRow(
      String name, String size, int used, String available, String each, String cost) {}

  /** A part, its sizes, and whether its grain is held. */
  public record PartRow(
      String mark, String name, String length, String width, int count, String grain) {}

  static ListPage of(LayoutSet set, List<SawnStock> stocks, Texts texts) {
    return new ListPage(
        sentence(set, texts),
        texts.say("list.used", set.usedPercent()),
        texts.say("list.kerf", texts.lengthWithUnit(set.job().kerf())),
        set.lengthsOnly(),
        set.costPlaces() >= 0,
        stockRows(set, stocks, texts),
        partRows(set, texts));
  }

  private static String sentence(LayoutSet set, Texts texts) {
    LayoutPlan plan = set.plan();
    String count = counted(set, plan.pieces().size(), texts);
    if (set.job().least() == Least.COST) {
      return plan.proved()
          ? texts.say("list.least-cost", count, money(set, set.cost(), texts))
          : texts.say(
              "list.at-least-cost",
              count,
              money(set, set.cost(), texts),
              money(set, plan.lowerBound(), texts));
    }
    return plan.proved()
        ? texts.say("list.fewest", count)
        : texts.say("list.at-least", count, plan.lowerBound());
  }

  /** A number of sheets or lengths in words. */
  static String counted(LayoutSet set, int count, Texts texts) {
    String what = set.lengthsOnly() ? "list.lengths" : "list.sheets";
    return texts.say(count == 1 ? what + ".one" : what, count);
  }

  static String size(LayoutSet set, Length length, Length width, Texts texts) {
    return set.lengthsOnly()
        ? texts.lengthWithUnit(length)
        : texts.say("size.two", texts.length(length), texts.lengthWithUnit(width));
  }

  private static String money(LayoutSet set, long cost, Texts texts) {
    return texts
        .words()
        .figures(BigDecimal.valueOf(cost, Math.max(0, set.costPlaces())).toPlainString());
  }

  private static List<StockRow> stockRows(LayoutSet set, List<SawnStock> stocks, Texts texts) {
    List<StockRow> rows = new ArrayList<>();
    for (SawnStock sawn : stocks) {
      Stock stock = set.job().stock().get(Integer.parseInt(sawn.name()) - 1);
      String available =
          stock.available() == Stock.UNLIMITED
              ? texts.say("list.no-limit")
              : Integer.toString(stock.available());
      rows.add(
          new StockRow(
              stock.name(),
              sawn.size(),
              sawn.count(),
              available,
              money(set, stock.cost(), texts),
              money(set, stock.cost() * sawn.count(), texts)));
    }
    return rows;
  }

  private static List<PartRow> partRows(LayoutSet set, Texts texts) {
    List<String> marks = set.marks();
    return IntStream.range(0, marks.size())
        .mapToObj(
            i -> {
              Blank blank = set.job().blanks().get(i);
              return new PartRow(
                  marks.get(i),
                  blank.name(),
                  texts.length(blank.length()),
                  texts.length(blank.width()),
                  blank.count(),
                  texts.say(blank.mayTurn() ? "list.may-turn" : "list.along"));
            })
        .toList();
  }
}
