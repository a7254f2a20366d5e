package storyrod.planset;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import storyrod.description.StockKind;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;
import storyrod.stock.SupplyPlan;

/** What the bookcase of the sample is bought and sawn from. */
final class SampleStock {
  private SampleStock() {}

  static StockPlan of(Piece piece) {
    List<StockPlan.RoughPart> rough =
        piece.marks().stream()
            .map(
                mark -> {
                  Length extra =
                      mark.shown().stock().kind() == StockKind.SOLID
                          ? Length.inches(1)
                          : Length.ZERO;
                  return new StockPlan.RoughPart(
                      mark.mark(),
                      mark.count(),
                      mark.shown().finishedLength().plus(extra),
                      mark.shown().finishedWidth().plus(extra.isZero() ? extra : Length.inch(1, 4)),
                      extra.isZero() ? mark.shown().finishedThickness() : extra);
                })
            .toList();
    return new StockPlan(
        rough,
        List.of(),
        List.of(
            new StockPlan.BoardNeed(
                Sample.ash(),
                Rational.of(new BigDecimal("8.53")),
                Rational.ZERO,
                Rational.of(new BigDecimal("10.3")),
                20,
                Optional.empty(),
                Optional.of(Rational.of(new BigDecimal("80.34"))))),
        List.of(
            new StockPlan.SheetPlan(
                Sample.ply(), List.of(sheet()), List.of(), 1, Optional.of(Rational.of(92, 1)))),
        List.of(
            new StockPlan.HardwareNeed(
                "screw", "Wood screw #8 x 1 3/4 in", 6, 1, 20, Optional.empty()),
            new StockPlan.HardwareNeed(
                "pin",
                "Shelf pin 1/4 in",
                8,
                1,
                20,
                Optional.of(Rational.of(new BigDecimal("4.20"))))),
        SupplyPlan.NONE);
  }

  private static StockPlan.SheetLayout sheet() {
    List<StockPlan.Placed> placed =
        List.of(
            new StockPlan.Placed("A", "left-side", Optional.empty(), area(0, Sample.TALL), false),
            new StockPlan.Placed("A", "right-side", Optional.empty(), area(29, Sample.TALL), false),
            new StockPlan.Placed(
                "B", "bottom", Optional.empty(), area(58, Length.inches(37)), false));
    List<SawCut> cuts =
        List.of(
            cut(1, true, 124, 768, 124),
            cut(2, false, 224, 124, 224),
            cut(3, false, 231, 124, 6),
            cut(4, false, 456, 124, 224),
            cut(5, false, 463, 124, 6),
            cut(6, false, 760, 124, 296),
            cut(7, true, 127, 768, 2));
    return new StockPlan.SheetLayout(
        Optional.empty(),
        Length.inches(96),
        Length.inches(48),
        placed,
        cuts,
        List.of(new Area(Length.ZERO, Length.inches(16), Length.inches(96), Length.inches(32))));
  }

  /** A cut that starts at zero, in eighths of an inch. */
  private static SawCut cut(int number, boolean along, long at, long to, long fence) {
    return new SawCut(
        number, along, Length.inch(at, 8), Length.ZERO, Length.inch(to, 8), Length.inch(fence, 8));
  }

  private static Area area(long x, Length length) {
    return new Area(Length.inches(x), Length.ZERO, length, Sample.DEEP);
  }
}
