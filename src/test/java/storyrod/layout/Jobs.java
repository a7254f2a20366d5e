package storyrod.layout;

import java.util.List;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutJob.Trim;
import storyrod.measure.Length;

/** Layout jobs for tests, in millimetres. */
public final class Jobs {
  private Jobs() {}

  public static Stock sheet(double length, double width, double trim) {
    return stock(length, width, trim, Stock.UNLIMITED, 1);
  }

  public static Stock stock(double length, double width, double trim, int available, long cost) {
    Trim each = Trim.all(mm(trim));
    return new Stock("sheet", mm(length), mm(width), available, cost, each, List.of());
  }

  public static Stock with(Stock stock, List<Area> defects) {
    return new Stock(
        stock.name(),
        stock.length(),
        stock.width(),
        stock.available(),
        stock.cost(),
        stock.trim(),
        defects);
  }

  public static Blank part(double length, double width, boolean mayTurn) {
    return part(length, width, 1, mayTurn);
  }

  public static Blank part(double length, double width, int count, boolean mayTurn) {
    return new Blank("part", mm(length), mm(width), count, mayTurn);
  }

  public static Area area(double x, double y, double length, double width) {
    return new Area(mm(x), mm(y), mm(length), mm(width));
  }

  public static LayoutJob job(double kerf, Stock stock, List<Blank> blanks) {
    return new LayoutJob(blanks, List.of(stock), mm(kerf), Least.PIECES);
  }

  public static Length mm(double mm) {
    return Length.nearest(mm);
  }
}
