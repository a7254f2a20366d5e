package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SheetLayout;

/** A hand-made layout of a sheet of 96 x 48 in with a kerf of 1/8 in, trimmed by 1/4 in. */
final class BenchSheets {
  private BenchSheets() {}

  static SheetLayout one() {
    return new SheetLayout(
        Optional.empty(),
        Length.inches(96),
        Length.inches(48),
        placed(),
        cuts(),
        List.of(area(52.125, 0.25, 43.625, 15.75), area(0.25, 34.125, 60, 13.625)));
  }

  private static Area area(double x, double y, double length, double width) {
    return new Area(
        BenchParts.at(BenchParts.in(x)),
        BenchParts.at(BenchParts.in(y)),
        BenchParts.at(BenchParts.in(length)),
        BenchParts.at(BenchParts.in(width)));
  }

  private static List<Placed> placed() {
    return List.of(
        new Placed("B", "bottom", Optional.empty(), area(0.25, 0.25, 51.75, 15.75), false),
        new Placed("A", "left-side", Optional.empty(), area(0.25, 16.125, 15.5, 15.75), false),
        new Placed("H", "panel", Optional.empty(), area(15.875, 16.125, 30, 17.875), false),
        new Placed("D", "drawer.left-side", Optional.empty(), area(46, 16.125, 14, 9), false),
        new Placed("G", "stretcher", Optional.empty(), area(60.125, 16.125, 3, 31.625), true),
        new Placed("K", "post", Optional.empty(), area(63.25, 16.125, 1.5, 31.625), true));
  }

  private static SawCut cut(int number, boolean along, double at, double from, double to) {
    return new SawCut(
        number,
        along,
        BenchParts.at(BenchParts.in(at)),
        BenchParts.at(BenchParts.in(from)),
        BenchParts.at(BenchParts.in(to)),
        BenchParts.at(BenchParts.in(at)));
  }

  private static List<SawCut> cuts() {
    return List.of(
        cut(1, true, 0.125, 0, 96),
        cut(2, true, 16, 0, 96),
        cut(3, false, 0.125, 0.25, 16),
        cut(4, false, 52, 0.25, 16),
        cut(5, false, 60, 16.125, 48),
        cut(6, false, 15.75, 16.125, 34),
        cut(7, true, 34, 0, 60),
        cut(8, false, 45.875, 16.125, 34),
        cut(9, false, 63.125, 16.125, 48),
        cut(10, false, 64.75, 16.125, 48));
  }
}
